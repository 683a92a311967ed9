package org.berrywatt.curve;

import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.uncertainty.Estimate;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;

/**
 * Top of a parabola over ln(V/I) through the points of greatest power.
 *
 * @param powerW uncertain by the scatter around the parabola
 * @param logLoad ln(V/I) of the top
 */
record Parabola(Estimate powerW, double logLoad) {
    private static final double NEAR_PEAK = 0.9;
    private static final int PARAMETERS = 3;

    static Parabola level(SweepPoint best, double powerW) {
        return new Parabola(Estimate.exact(powerW), best.logLoad());
    }

    /** Through the best point, which is not at either end, its neighbours and all points above nine tenths of it. */
    static Parabola through(List<SweepPoint> delivering, int best) {
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
        var p = fit.estimateRegressionParameters();
        var opensDown = p[2] < 0;
        var top = opensDown ? p[0] - p[1] * p[1] / (4 * p[2]) : 1;
        var scatter = near.size() > PARAMETERS ? fit.estimateRegressionStandardError() : 0;
        return new Parabola(new Estimate(top, scatter).times(unitW), opensDown ? centre - p[1] / (2 * p[2]) : centre);
    }

    private static double[] powers(double x) {
        return new double[] {x, x * x};
    }
}
