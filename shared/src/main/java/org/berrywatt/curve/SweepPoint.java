package org.berrywatt.curve;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;

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

    /** Several readings at one load as one; half of how far they lie apart is rectangular. */
    static SweepPoint mean(List<SweepPoint> readings) {
        var voltages = readings.stream().mapToDouble(SweepPoint::voltageV).summaryStatistics();
        var currents = readings.stream().mapToDouble(SweepPoint::currentA).summaryStatistics();
        return new SweepPoint(
                voltages.getAverage(),
                currents.getAverage(),
                spread(readings, SweepPoint::voltageUncertaintyV, voltages),
                spread(readings, SweepPoint::currentUncertaintyA, currents));
    }

    private static double spread(
            List<SweepPoint> readings, ToDoubleFunction<SweepPoint> meter, DoubleSummaryStatistics values) {
        var largest = readings.stream().mapToDouble(meter).max().orElse(0);
        return Math.hypot(largest, (values.getMax() - values.getMin()) / Math.sqrt(12));
    }

    double powerW() {
        return voltageV * currentA;
    }

    /** Whether it lies between short and open circuit. */
    public boolean deliversPower() {
        return voltageV > 0 && powerW() >= Double.MIN_NORMAL;
    }

    /** ln(V/I), in which the power of a straight curve is symmetric around its peak. */
    double logLoad() {
        return Math.log(voltageV / currentA);
    }
}
