package org.berrywatt.normalise;

import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.uncertainty.Input;

/**
 * The light as terms of the model.
 *
 * @param effectiveWm2 effective irradiance at the cell
 */
record LightTerms(Term effectiveWm2) {
    static final String READING = "input.lightReading";
    static final String CALIBRATION = "input.lightCalibration";
    static final String MISMATCH = "input.mismatch";
    /** Light differs over the spot, and no two cells lie alike: 5 % (common practice, no source). */
    private static final double PLACE_UNCERTAINTY = 0.05;

    static LightTerms of(EffectiveIrradiance light, Inputs inputs) {
        var reading = inputs.add(Input.normal(READING, light.readingWm2(), "W/m²"));
        var calibration = inputs.add(Input.normal(CALIBRATION, light.calibration(), "1"));
        var mismatch = inputs.add(Input.normal(MISMATCH, light.mismatch(), "1"));
        var place = inputs.add(Input.normal("input.place", 1, "1", PLACE_UNCERTAINTY));
        return new LightTerms(reading.times(calibration).times(mismatch).times(place));
    }
}
