package org.berrywatt.normalise;

/**
 * Short-circuit current and open-circuit voltage read one after the other.
 *
 * @param currentA delivered current positive
 * @param voltageV delivered voltage positive
 * @param burdenOhm resistance of the current range with its leads, in [0, ∞); 0 where it is not known to matter
 */
public record SpotReading(Shown currentA, Shown voltageV, double burdenOhm) implements UnderLight {
    /**
     * Checks the burden.
     *
     * @throws NormalisationRefused when it is not in [0, ∞)
     */
    public SpotReading {
        Limits.require(burdenOhm >= 0 && burdenOhm < Double.POSITIVE_INFINITY, "burden", burdenOhm, "[0, infinity)");
    }
}
