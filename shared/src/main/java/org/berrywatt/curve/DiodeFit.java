package org.berrywatt.curve;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.uncertainty.Estimate;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.RealVector;

/**
 * A single diode fitted to a sweep by weighted least squares, from several starts, with what the points leave open.
 *
 * <p>Points weigh by their meter's uncertainty, the voltage's by way of the slope. Where they scatter more than the meter
 * promises, the scatter counts; without a stated uncertainty it is all there is. The covariance is that of errors which are
 * independent from point to point: a meter that reads two per cent high throughout is a matter of its calibration.
 */
public final class DiodeFit {
    private static final int STARTS = 3;
    private static final int STEPS_OF_A_START = 60;
    private static final int ENOUGH_STEPS = 200;
    /** Without stated uncertainty and without points to spare nothing tells the scatter. */
    private static final double ASSUMED_SCATTER = 0.05;

    private static final double COVERAGE_95_UPPER = 0.975;

    private final Diode diode;
    private final double rmseA;
    private final FitSpread spread;

    private DiodeFit(Diode diode, double rmseA, FitSpread spread) {
        this.diode = diode;
        this.rmseA = rmseA;
        this.spread = spread;
    }

    /**
     * Fits the current that solves the model.
     *
     * @param points at least five of distinct load, in any order
     * @param temperatureC of the cell, in [-100, 200]
     * @throws SweepRefused when {@link Sweep#of} refuses the points
     * @throws IllegalArgumentException when the temperature lies outside its domain
     */
    public static DiodeFit of(List<SweepPoint> points, double temperatureC) {
        return of(points, temperatureC, FitCriterion.SOLVED);
    }

    /** Fits by another criterion; see {@link #of(List, double)}. */
    public static DiodeFit of(List<SweepPoint> points, double temperatureC, FitCriterion criterion) {
        SweepDoor.checkTemperature(temperatureC);
        var coordinates = FitCoordinates.around(Sweep.of(points).figures(), temperatureC);
        var starts = FitStarts.best(points, coordinates);
        var first = residuals(points, coordinates, starts.get(0), criterion);
        var near = starts.stream()
                .limit(STARTS)
                .map(start -> first.from(start, STEPS_OF_A_START))
                .min(Comparator.comparingDouble(LeastSquares::sumOfSquares))
                .orElseThrow();
        var residuals = residuals(points, coordinates, near.point(), criterion);
        var best = residuals.from(near.point(), ENOUGH_STEPS);
        return of(best, residuals);
    }

    private static FitResiduals residuals(
            List<SweepPoint> points, FitCoordinates coordinates, RealVector near, FitCriterion criterion) {
        return new FitResiduals(points, FitWeights.of(points, coordinates.diode(near)), coordinates, criterion);
    }

    private static DiodeFit of(LeastSquares best, FitResiduals residuals) {
        var diode = residuals.coordinates().diode(best.point());
        var spread = FitSpread.around(
                best, residuals, scatter(best, residuals.weights().stated()));
        return new DiodeFit(diode, rmseA(diode, residuals), spread);
    }

    private static double rmseA(Diode diode, FitResiduals residuals) {
        return Math.sqrt(residuals.points().stream()
                .mapToDouble(point -> residuals.criterion().currentA(diode, point) - point.currentA())
                .map(miss -> miss * miss)
                .average()
                .orElseThrow());
    }

    /** Standard deviation of a residual in its unit; from few spare points, so much larger that 95 % intervals hold. */
    private static double scatter(LeastSquares best, boolean stated) {
        var spare = best.degreesOfFreedom();
        if (spare <= 0) {
            return stated ? 1 : ASSUMED_SCATTER;
        }
        var seen = Math.sqrt(best.sumOfSquares() / spare);
        var few = new TDistribution(spare).inverseCumulativeProbability(COVERAGE_95_UPPER) / Estimate.COVERAGE_95;
        return stated ? Math.max(1, seen) : seen * few;
    }

    /** The best fit. */
    public Diode diode() {
        return diode;
    }

    /** Root mean square of model minus measured current by the fit's criterion, in A. */
    public double rmseA() {
        return rmseA;
    }

    /** The five parameters in the order of {@link DiodeParameter}. */
    public List<FittedParameter> parameters() {
        var deviations = deviationsOfLogs();
        var parameters = DiodeParameter.values();
        return IntStream.range(0, parameters.length)
                .mapToObj(i -> FittedParameter.of(parameters[i], diode, deviations[i]))
                .toList();
    }

    /** Whether the points tell all five parameters. */
    public boolean identifiable() {
        return parameters().stream().allMatch(FittedParameter::identifiable);
    }

    /** Covariance of the natural logarithms of the parameters, 5 x 5, in the order of {@link DiodeParameter}. */
    public double[][] covariance() {
        return spread.ofLogs().getData();
    }

    /** Correlation of the same, each in [-1, 1]. */
    public double[][] correlation() {
        var correlation = covariance();
        var deviations = deviationsOfLogs();
        for (int i = 0; i < deviations.length; i++) {
            for (int j = 0; j < deviations.length; j++) {
                correlation[i][j] /= deviations[i] * deviations[j];
            }
        }
        return correlation;
    }

    /**
     * One of the diodes that the points allow, always a physical one: random normal deviates give an ensemble, five zeros its
     * middle.
     *
     * @param fiveStandardNormals independent deviates of a normal distribution with mean 0 and variance 1
     */
    public Diode drawn(double[] fiveStandardNormals) {
        return spread.drawn(fiveStandardNormals);
    }

    private double[] deviationsOfLogs() {
        var covariance = covariance();
        return IntStream.range(0, covariance.length)
                .mapToDouble(i -> Math.sqrt(covariance[i][i]))
                .toArray();
    }
}
