package org.berrywatt.server.access;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.crypto.password.Pbkdf2PasswordEncoder;
import org.springframework.security.crypto.password.Pbkdf2PasswordEncoder.SecretKeyFactoryAlgorithm;

/**
 * Which passwords are taken and how they are kept: PBKDF2 with HMAC-SHA-512, 210 000 rounds and 16 bytes of salt, as the OWASP
 * Password Storage Cheat Sheet recommends where a hash that every Java platform brings is wanted. Hashes of earlier servers
 * (bcrypt) still open, and are replaced at the next sign-in.
 */
final class Passwords {

    private static final int SHORTEST = 10;

    /** Far beyond what anybody types; bounds the work of a hash. */
    private static final int LONGEST = 200;

    /** Stands where a refusal repeats what was typed. */
    private static final String UNSAID = "\u2026";

    private static final int ROUNDS = 210_000;
    private static final int SALT_BYTES = 16;
    private static final String KIND = "pbkdf2-sha512";

    private final PasswordEncoder encoder = new DelegatingPasswordEncoder(
            KIND,
            Map.of(
                    KIND,
                    new Pbkdf2PasswordEncoder("", SALT_BYTES, ROUNDS, SecretKeyFactoryAlgorithm.PBKDF2WithHmacSHA512),
                    "bcrypt",
                    new BCryptPasswordEncoder()));

    /**
     * Any characters will do, unless a teacher of this name would use just these.
     *
     * @throws Refusal {@code password.weak} below 10 characters, {@code text.tooLong} above 200, {@code password.guessable}
     *     when it is found within {@link Guessing#ENOUGH_TRIES}
     */
    static void check(String password, String name) {
        if (password.length() < SHORTEST) {
            throw Refusal.of(ProblemCode.PASSWORD_WEAK).field("password").limit(SHORTEST);
        }
        if (password.length() > LONGEST) {
            throw Refusal.of(ProblemCode.TEXT_TOO_LONG)
                    .field("password")
                    .value(UNSAID)
                    .limit(LONGEST);
        }
        var tries = Guessing.tries(password, name);
        if (!(tries >= Guessing.ENOUGH_TRIES)) {
            throw Refusal.of(ProblemCode.PASSWORD_GUESSABLE)
                    .field("password")
                    .value(grouped(rounded(tries)))
                    .limit(grouped(Guessing.ENOUGH_TRIES));
        }
    }

    /** To one digit, since it is an estimate. */
    private static long rounded(double tries) {
        return new BigDecimal(tries).round(new MathContext(1)).longValue();
    }

    private static String grouped(long number) {
        return String.format(Locale.ROOT, "%,d", number).replace(',', '\u00a0');
    }

    String hash(String password) {
        return Objects.requireNonNull(encoder.encode(password));
    }

    boolean matches(String password, String hash) {
        return password.length() <= LONGEST && encoder.matches(password, hash);
    }

    /** Whether an earlier server made this hash. */
    boolean isOld(String hash) {
        return encoder.upgradeEncoding(hash);
    }
}
