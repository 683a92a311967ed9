package org.berrywatt.light;

/** Kinds of instrument that read the light at a station; each has a spectral response. */
public enum Instrument {
    LUX_METER("luxMeter"),
    SOLAR_METER("solarMeter"),
    REFERENCE_CELL("referenceCell");

    private final String key;

    Instrument(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
