package org.berrywatt.curve;

import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.uncertainty.Estimate;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;

/**
 * Maximum power by a parabola over ln(V/I) through the best point, its neighbours and all points above nine tenths of it;
 * never beyond the points, never outside {@link PowerBounds}.
 *
 * @param powerW with the bounds, the scatter around the parabola and the meter in its uncertainty
 * @param bracketed whether points lie on both sides of the best one
 */
record PowerFit(Estimate powerW, boolean bracketed) {
    private static final double NEAR_PEAK = 0.9;
    private static final int PARAMETERS = 3;

    static PowerFit of(List<SweepPoint> along) {
        var delivering = along.stream().filter(SweepPoint::deliversPower).toList();
        var best = best(delivering);
        var bounds = PowerBounds.of(along);
        var bracketed = best > 0 && best < delivering.size() - 1;
        var peak = bracketed ? parabola(delivering, best) : new Estimate(bounds.lowW(), 0);
        var powerW = Math.min(bounds.highW(), Math.max(bounds.lowW(), peak.value()));
        var meter = powerW * meter(delivering.get(best));
        var shape = bounds.standardUncertaintyW(powerW);
        return new PowerFit(
                new Estimate(powerW, Math.hypot(Math.hypot(peak.standardUncertainty(), shape), meter)), bracketed);
    }

    private static int best(List<SweepPoint> delivering) {
        return IntStream.range(0, delivering.size())
                .reduce((a, b) -> delivering.get(b).powerW() > delivering.get(a).powerW() ? b : a)
                .orElseThrow();
    }

    private static Estimate parabola(List<SweepPoint> delivering, int best) {
        var centre = delivering.get(best).logLoad();
        var unitW = delivering.get(best).powerW();
        var near = IntStream.range(0, delivering.size())
                .filter(i -> Math.abs(i - best) <= 1 || delivering.get(i).powerW() >= NEAR_PEAK * unitW)
                .mapToObj(delivering::get)
                .toList();
        var fit = new OLSMultipleLinearRegression();
        fit.newSampleData(
                near.stream().mapToDouble(point -> point.powerW() / unitW).toArray(),
                near.stream().map(point -> powers(point.logLoad() - centre)).toArray(double[][]::new));
        return peak(fit, near).times(unitW);
    }

    private static double[] powers(double x) {
        return new double[] {x, x * x};
    }

    private static Estimate peak(OLSMultipleLinearRegression fit, List<SweepPoint> near) {
        var p = fit.estimateRegressionParameters();
        var top = p[2] < 0 ? p[0] - p[1] * p[1] / (4 * p[2]) : 1;
        return new Estimate(top, near.size() > PARAMETERS ? fit.estimateRegressionStandardError() : 0);
    }

    private static double meter(SweepPoint point) {
        return Math.hypot(
                point.voltageUncertaintyV() / point.voltageV(), point.currentUncertaintyA() / point.currentA());
    }
}
