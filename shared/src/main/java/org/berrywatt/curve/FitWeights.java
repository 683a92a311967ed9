package org.berrywatt.curve;

import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/**
 * How far each measured current may be off its curve: its own uncertainty, and that of its voltage by way of the slope
 * (effective variance: J. Orear, American Journal of Physics 50, 1982, 912, from memory).
 *
 * @param uncertaintiesA one per point, in (0, ∞)
 * @param stated whether they come from the meter; else all are the same and only their ratio counts
 */
record FitWeights(RealVector uncertaintiesA, boolean stated) {
    /** A point said to be exact among others that are not is good to this part of the largest current. */
    private static final double FINEST = 1e-5;

    static FitWeights of(List<SweepPoint> points, Diode near) {
        var largestA = near.shortCircuitCurrentA();
        var stated = points.stream().anyMatch(FitWeights::isStated);
        var uncertaintiesA = points.stream()
                .mapToDouble(point -> stated ? Math.max(FINEST * largestA, uncertaintyA(point, near)) : largestA)
                .toArray();
        return new FitWeights(new ArrayRealVector(uncertaintiesA, false), stated);
    }

    private static boolean isStated(SweepPoint point) {
        return point.currentUncertaintyA() > 0 || point.voltageUncertaintyV() > 0;
    }

    private static double uncertaintyA(SweepPoint point, Diode near) {
        var slopeS = near.terminalConductanceS(near.junctionAtVoltage(point.voltageV()));
        return Math.hypot(point.currentUncertaintyA(), slopeS * point.voltageUncertaintyV());
    }
}
