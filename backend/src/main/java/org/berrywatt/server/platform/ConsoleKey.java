package org.berrywatt.server.platform;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A key that somebody reads off a console and types into a page: 16 characters out of 31 (79 bits), in groups of four.
 * Capitals, spaces and hyphens do not matter.
 */
public record ConsoleKey(String text) {

    /** No letter or digit that looks like another one. */
    private static final String ALPHABET = "abcdefghjkmnpqrstuvwxyz23456789";

    /** A new one, which nobody has. */
    public static ConsoleKey random() {
        return new ConsoleKey(new SecureRandom()
                .ints(16, 0, ALPHABET.length())
                .mapToObj(at -> ALPHABET.substring(at, at + 1))
                .collect(Collectors.joining())
                .replaceAll("(.{4})(?!$)", "$1-"));
    }

    /** Whether somebody typed this key. */
    public boolean is(String tried) {
        return MessageDigest.isEqual(bytes(text), bytes(tried));
    }

    /** SHA-256 in hexadecimal; a random key of this length needs no salt. */
    String hash() {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes(text)));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java platform has SHA-256", missing);
        }
    }

    private static byte[] bytes(String key) {
        return key.toLowerCase(Locale.ROOT).replaceAll("[\\s-]", "").getBytes(StandardCharsets.UTF_8);
    }
}
