package org.berrywatt.normalise;

import java.util.stream.Stream;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Input;

/**
 * The light as terms of the model.
 *
 * @param logEffective logarithm of the effective irradiance at the cell in W/m²
 * @param logTotal logarithm of the total irradiance at the cell in W/m²
 * @param relativeUncertainty of the effective irradiance at the cell
 */
record LightTerms(Term logEffective, Term logTotal, double relativeUncertainty) {
    static final String READING = "input.lightReading";
    static final String CALIBRATION = "input.lightCalibration";
    static final String MISMATCH = "input.mismatch";

    static LightTerms of(LightAtCell at, Inputs inputs) {
        var light = at.irradiance();
        var causes = LightCauses.of(at);
        var reading = inputs.addLogarithm(
                Input.normal(READING, light.readingWm2(), "W/m²").sharedBy(causes.reading()));
        var calibration = inputs.addLogarithm(
                Input.normal(CALIBRATION, light.calibration(), "1").sharedBy(causes.calibration()));
        var mismatch = inputs.addLogarithm(
                Input.normal(MISMATCH, light.mismatch(), "1").sharedBy(causes.mismatch()));
        var total = inputs.addLogarithm(
                Input.normal("input.lampTotal", totalFactor(light), "1").sharedBy(causes.total()));
        var place = inputs.addLogarithm(Input.normal("input.place", 1, "1", at.placeUncertainty()));
        var shown = reading.plus(calibration).plus(place);
        return new LightTerms(shown.plus(mismatch), shown.plus(total), relativeUncertainty(at));
    }

    /** Total irradiance over what the instrument read. */
    private static Estimate totalFactor(EffectiveIrradiance light) {
        var value = light.totalWm2().value() / light.readingWm2().value();
        var known = Math.hypot(
                light.readingWm2().relativeUncertainty(), light.calibration().relativeUncertainty());
        var own = Math.pow(light.totalWm2().relativeUncertainty(), 2) - known * known;
        return new Estimate(value, value * Math.sqrt(Math.max(0, own)));
    }

    private static double relativeUncertainty(LightAtCell at) {
        var light = at.irradiance();
        return Math.sqrt(Stream.of(light.readingWm2(), light.calibration(), light.mismatch())
                        .mapToDouble(part -> Math.pow(part.relativeUncertainty(), 2))
                        .sum()
                + at.placeUncertainty() * at.placeUncertainty());
    }
}
