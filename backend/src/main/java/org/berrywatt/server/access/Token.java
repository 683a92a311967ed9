package org.berrywatt.server.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/**
 * A secret that stands for its holder, a browser's in its cookie or a device's: 256 random bits.
 *
 * @param text the secret itself, never stored
 */
public record Token(String text) {

    private static final SecureRandom RANDOM = new SecureRandom();

    /** A new one, which nobody has. */
    public static Token random() {
        var bytes = new byte[32];
        RANDOM.nextBytes(bytes);
        return new Token(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
    }

    /** SHA-256 in hexadecimal; a random secret of this length needs no salt. */
    public String hash() {
        try {
            var digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java platform has SHA-256", missing);
        }
    }
}
