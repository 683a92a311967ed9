package org.berrywatt.server.access;

import com.nulabinc.zxcvbn.Zxcvbn;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.springframework.core.io.ClassPathResource;

/**
 * How many tries somebody needs who guesses common passwords, words, names, years, rows of keys and repetitions first, and
 * what belongs to this place before all: the teacher's name and {@code access/tried-first.txt}. The estimate is that of D. L.
 * Wheeler, "zxcvbn: Low-Budget Password Strength Estimation", USENIX Security 2016.
 */
final class Guessing {

    /** Beyond the reach of tries that nothing slows down, according to the same work: its third of four grades. */
    static final long ENOUGH_TRIES = 100_000_000;

    /** A longer password is no easier than its beginning, and the estimate takes time. */
    private static final int LOOKED_AT = 64;

    private static final Zxcvbn ESTIMATE = new Zxcvbn();
    private static final List<String> TRIED_FIRST = words();

    private Guessing() {}

    /** In [1, infinity), for the password of a teacher of this name. */
    static double tries(String password, String name) {
        var first = new ArrayList<>(partsOf(name.strip().toLowerCase(Locale.ROOT)));
        first.addAll(TRIED_FIRST);
        var beginning = password.substring(0, Math.min(password.length(), LOOKED_AT));
        return ESTIMATE.measure(beginning, first).getGuesses();
    }

    /** A name as it is, its words put together in the usual ways, and each of them. */
    private static List<String> partsOf(String name) {
        var words = name.split("[\\s._-]+");
        return Stream.of(
                        Stream.of(name),
                        Stream.of("", ".", "-", "_").map(between -> String.join(between, words)),
                        Stream.of(words))
                .flatMap(parts -> parts)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    private static List<String> words() {
        try {
            return new ClassPathResource("access/tried-first.txt")
                    .getContentAsString(StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .toList();
        } catch (IOException missing) {
            throw new UncheckedIOException("the words that are tried first are not on the class path", missing);
        }
    }
}
