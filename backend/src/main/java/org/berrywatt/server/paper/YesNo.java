package org.berrywatt.server.paper;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Words;

/** A box that is ticked or not. */
final class YesNo {

    static final List<String> CHOICES = List.of("yes", "no");
    static final String WORDS = "data.paper.";

    private static final Set<String> YES = Set.of("yes", "y", "ja", "j", "true", "wahr", "1", "x");
    private static final Set<String> NO = Set.of("", "no", "n", "nein", "false", "falsch", "0");

    private YesNo() {}

    /** @throws Refusal {@code choice.unknown} */
    static boolean of(String column, String text) {
        var word = text.toLowerCase(Locale.ROOT);
        if (YES.contains(word) || NO.contains(word)) {
            return YES.contains(word);
        }
        throw Refusal.of(ProblemCode.CHOICE_UNKNOWN)
                .field(column)
                .value(Words.excerpt(text))
                .limit(String.join(", ", CHOICES));
    }
}
