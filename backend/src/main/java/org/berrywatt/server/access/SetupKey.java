package org.berrywatt.server.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** The key on the console that makes its reader the first teacher; new with every start. */
@Component
class SetupKey {

    /** No letter or digit that looks like another one. */
    private static final String ALPHABET = "abcdefghjkmnpqrstuvwxyz23456789";

    private final String text;

    SetupKey() {
        text = new SecureRandom()
                .ints(16, 0, ALPHABET.length())
                .mapToObj(at -> ALPHABET.substring(at, at + 1))
                .collect(Collectors.joining())
                .replaceAll("(.{4})(?!$)", "$1-");
    }

    /** Four groups of four letters and digits. */
    String text() {
        return text;
    }

    boolean is(String tried) {
        return MessageDigest.isEqual(bytes(text), bytes(tried));
    }

    private static byte[] bytes(String key) {
        return key.toLowerCase(java.util.Locale.ROOT).replaceAll("[\\s-]", "").getBytes(StandardCharsets.UTF_8);
    }
}
