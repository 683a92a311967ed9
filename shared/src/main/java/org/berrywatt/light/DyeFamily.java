package org.berrywatt.light;

/** Families of plant dye by the band of light they absorb. */
public enum DyeFamily {
    ANTHOCYANIN("anthocyanin"),
    BETALAIN("betalain"),
    CHLOROPHYLL("chlorophyll"),
    UNDYED("undyed"),
    OTHER("other");

    private final String key;

    DyeFamily(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
