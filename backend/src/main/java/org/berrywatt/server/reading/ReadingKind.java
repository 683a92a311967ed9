package org.berrywatt.server.reading;

import java.util.Arrays;
import java.util.List;

/** Kinds of reading. */
public enum ReadingKind {
    /** The covered cell. */
    DARK("dark"),
    /** Open-circuit voltage and short-circuit current under a station's light. */
    LIGHT("light"),
    /** Several loads under a station's light. */
    SWEEP("sweep"),
    /** A station's light opened and covered in turn, three times or more. */
    TOGGLES("toggles");

    static final List<String> KEYS =
            Arrays.stream(values()).map(ReadingKind::key).toList();

    private final String key;

    ReadingKind(String key) {
        this.key = key;
    }

    static ReadingKind of(String key) {
        return Arrays.stream(values())
                .filter(kind -> kind.key.equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** Whether a result can be made of it. */
    public boolean isUnderLight() {
        return this == LIGHT || this == SWEEP;
    }

    /** Whether it is written in rows, in which a change here or there does not speak for itself. */
    boolean isInRows() {
        return this == SWEEP || this == TOGGLES;
    }

    public String key() {
        return key;
    }
}
