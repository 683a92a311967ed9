package org.berrywatt.server.labday;

import java.security.SecureRandom;
import java.util.Locale;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Join codes: six characters out of 24, about 190 million codes. No character looks like another one (no 0 O, 1 I L, 2 Z,
 * 5 S, 8 B, U V), so that a code survives handwriting and a far wall.
 */
@Component
public class JoinCodes {

    private static final String ALPHABET = "ACDEFGHJKMNPQRTVWXY34679";
    private static final int LENGTH = 6;

    private final SecureRandom random = new SecureRandom();
    private final JdbcClient jdbc;

    JoinCodes(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** How many codes there are. */
    static double all() {
        return Math.pow(ALPHABET.length(), LENGTH);
    }

    /** A code as stored, from one as typed: case, spaces and dashes do not matter. */
    public static String read(String typed) {
        return typed.replaceAll("[\\s\\p{Pd}\\p{Z}]", "").toUpperCase(Locale.ROOT);
    }

    /** A code that no day and no team has. */
    public String reserve() {
        return Stream.generate(this::draw).filter(this::takes).findFirst().orElseThrow();
    }

    private String draw() {
        var code = new StringBuilder(LENGTH);
        random.ints(LENGTH, 0, ALPHABET.length()).forEach(i -> code.append(ALPHABET.charAt(i)));
        return code.toString();
    }

    private boolean takes(String code) {
        return jdbc.sql("insert into join_code (code) values (?) on conflict do nothing")
                        .param(code)
                        .update()
                == 1;
    }
}
