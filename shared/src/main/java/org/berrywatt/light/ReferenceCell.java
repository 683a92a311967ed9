package org.berrywatt.light;

import org.berrywatt.uncertainty.Estimate;

/**
 * A silicon cell of known short-circuit current as an instrument (IEC 60904-2): its current is proportional to the light, so
 * that it reads G = Gcal I/Ical of sunlight.
 *
 * @param calibrationCurrentA short-circuit current under the calibration light, value in (0, ∞)
 * @param calibrationLightWm2 the light of its calibration in W/m² of AM1.5 sunlight, in (0, ∞); 1000 as a rule
 */
public record ReferenceCell(Estimate calibrationCurrentA, double calibrationLightWm2) {
    /**
     * Checks the calibration.
     *
     * @throws IllegalArgumentException when current or light is not in (0, ∞)
     */
    public ReferenceCell {
        if (!(calibrationCurrentA.value() > 0)) {
            throw new IllegalArgumentException(
                    "a reference cell has a known current in (0, ∞) A, not " + calibrationCurrentA.value());
        }
        if (!(calibrationLightWm2 > 0 && calibrationLightWm2 < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a reference cell was calibrated under light in (0, ∞) W/m², not " + calibrationLightWm2);
        }
    }

    /**
     * The sunlight that gives the cell this current, in W/m², uncertain by the reading of the current alone.
     *
     * @param currentA short-circuit current read, value in (0, ∞)
     * @throws IllegalArgumentException when the current is not in (0, ∞)
     */
    public Estimate readingWm2(Estimate currentA) {
        if (!(currentA.value() > 0)) {
            throw new IllegalArgumentException(
                    "a lit reference cell gives a current in (0, ∞) A, not " + currentA.value());
        }
        return currentA.times(calibrationLightWm2 / calibrationCurrentA.value());
    }

    /** Factor 1 with the relative uncertainty of the known current, which all readings of this cell share. */
    Estimate calibration() {
        return new Estimate(1, calibrationCurrentA.relativeUncertainty());
    }
}
