package org.berrywatt.curve;

/**
 * A measured point of a load sweep, delivered current positive.
 *
 * @param voltageV finite
 * @param currentA finite
 * @param voltageUncertaintyV standard uncertainty of the meter, in [0, ∞)
 * @param currentUncertaintyA standard uncertainty of the meter, in [0, ∞)
 */
public record SweepPoint(double voltageV, double currentA, double voltageUncertaintyV, double currentUncertaintyA) {

    /** A point without meter uncertainty. */
    public static SweepPoint exact(double voltageV, double currentA) {
        return new SweepPoint(voltageV, currentA, 0, 0);
    }

    double powerW() {
        return voltageV * currentA;
    }
}
