package org.berrywatt.curve;

import org.berrywatt.uncertainty.Estimate;

/** Maximum power over the product of short-circuit current and open-circuit voltage. */
final class FillFactor {
    private FillFactor() {}

    /** From independent figures (JCGM 100:2008, 5.1.6). */
    static Estimate of(Estimate currentA, Estimate voltageV, Estimate powerW) {
        var value = powerW.value() / (currentA.value() * voltageV.value());
        var relative = Math.hypot(
                Math.hypot(currentA.relativeUncertainty(), voltageV.relativeUncertainty()),
                powerW.relativeUncertainty());
        return new Estimate(value, value * relative);
    }
}
