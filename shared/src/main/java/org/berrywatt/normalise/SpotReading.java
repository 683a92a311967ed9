package org.berrywatt.normalise;

import org.berrywatt.meter.Multimeter;
import org.berrywatt.quantity.Amount;

/**
 * Short-circuit current and open-circuit voltage read one after the other.
 *
 * @param currentA delivered current positive
 * @param voltageV delivered voltage positive
 * @param burdenOhm resistance of the current range with its leads, in [0, ∞); 0 where it is not known to matter
 * @param inputResistanceOhm of the voltage range, in (0, ∞]; ∞ where it is not known to matter
 */
public record SpotReading(Shown currentA, Shown voltageV, double burdenOhm, double inputResistanceOhm)
        implements UnderLight {
    /** Two readings as typed, taken with a meter in the ranges that show such numbers. */
    public static SpotReading with(Multimeter meter, Amount current, Amount voltage) {
        return new SpotReading(
                Shown.by(meter.current(), current),
                Shown.by(meter.voltage(), voltage),
                meter.rangeOf(current.valueSi(), current.resolutionSi()).resistanceOhm(),
                meter.inputResistanceOhm());
    }

    /**
     * Checks the meter.
     *
     * @throws NormalisationRefused when the burden is not in [0, ∞) or the input resistance not in (0, ∞]
     */
    public SpotReading {
        Limits.require(burdenOhm >= 0 && burdenOhm < Double.POSITIVE_INFINITY, "burden", burdenOhm, "[0, ∞)");
        Limits.require(inputResistanceOhm > 0, "inputResistance", inputResistanceOhm, "(0, ∞]");
    }
}
