package org.berrywatt.server.calculator;

import java.util.HashSet;
import java.util.List;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;

/** Names that a calculation is given. */
final class Named {

    private static final int MOST_CHARACTERS = 60;

    private Named() {}

    /** @throws Refusal {@code value.missing}, {@code text.empty}, {@code text.unfit}, {@code text.tooLong} */
    static String line(String path, @Nullable String name) {
        return Words.line(path, name, MOST_CHARACTERS);
    }

    /** @throws Refusal {@code calculation.twice} when two of one list have one name */
    static void requireDistinct(String field, List<String> names) {
        var known = new HashSet<String>();
        for (var i = 0; i < names.size(); i++) {
            if (!known.add(names.get(i))) {
                throw Refusal.of(ProblemCode.CALCULATION_TWICE)
                        .field(field + "[" + i + "]")
                        .value(Words.excerpt(names.get(i)));
            }
        }
    }
}
