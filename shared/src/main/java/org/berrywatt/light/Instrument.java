package org.berrywatt.light;

/**
 * Kinds of instrument that read the light at a station; each has a spectral response.
 *
 * <p>Relative standard uncertainties of their calibration: common practice, no source.
 */
public enum Instrument {
    /** Reads lux; follows the eye. */
    LUX_METER("luxMeter", 0.10),
    /** Reads W/m² with a black plate that takes all wavelengths alike. */
    SOLAR_METER("solarMeter", 0.05),
    /** Reads W/m² of sunlight with a silicon cell, as most small solar meters do. */
    REFERENCE_CELL("referenceCell", 0.05);

    private final String key;
    private final double calibrationUncertainty;

    Instrument(String key, double calibrationUncertainty) {
        this.key = key;
        this.calibrationUncertainty = calibrationUncertainty;
    }

    public String key() {
        return key;
    }

    /** Relative standard uncertainty. */
    double calibrationUncertainty() {
        return calibrationUncertainty;
    }
}
