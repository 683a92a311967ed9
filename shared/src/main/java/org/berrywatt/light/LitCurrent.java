package org.berrywatt.light;

import org.berrywatt.uncertainty.Estimate;

/**
 * What a cell gave in some light.
 *
 * @param lightWm2 effective irradiance, value in (0, ∞)
 * @param currentA photocurrent at short circuit, value in (0, ∞)
 */
public record LitCurrent(Estimate lightWm2, Estimate currentA) {
    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException when light or current is not in (0, ∞)
     */
    public LitCurrent {
        requirePositive("light", lightWm2.value(), "W/m²");
        requirePositive("photocurrent", currentA.value(), "A");
    }

    /** Relative standard uncertainty of light and current together. */
    double relativeUncertainty() {
        return Math.hypot(lightWm2.relativeUncertainty(), currentA.relativeUncertainty());
    }

    private static void requirePositive(String what, double value, String unit) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(what + " lies in (0, ∞) " + unit + ", not " + value);
        }
    }
}
