package org.berrywatt.server.reading;

/** Kinds of reading. */
public enum ReadingKind {
    /** The covered cell. */
    DARK("dark"),
    /** Open-circuit voltage and short-circuit current under a station's light. */
    LIGHT("light"),
    /** Several loads under a station's light. */
    SWEEP("sweep");

    private final String key;

    ReadingKind(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
