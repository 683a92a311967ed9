package org.berrywatt.findings;

import java.util.Optional;
import java.util.stream.IntStream;
import org.berrywatt.statistics.FirthLogistic;

/**
 * Chance that a cell comes through, along a number: logistic with Firth's penalty.
 *
 * @param intercept log odds at 0
 * @param slope change of the log odds per unit
 * @param slopeLow lower end of the slope's 95 % profile interval
 * @param slopeHigh upper end
 * @param p of the slope, in [0, 1]
 */
public record YieldCurve(double intercept, double slope, double slopeLow, double slopeHigh, double p) {

    /** Profiles take a fit for every look; so many different numbers are no level of a class. */
    private static final int MOST_LEVELS = 400;

    static Optional<YieldCurve> of(Levels levels) {
        Level[] decided = levels.all().stream()
                .filter(level -> level.number().isPresent() && level.counted() + level.failed() > 0)
                .toArray(Level[]::new);
        if (decided.length < 2 || decided.length > MOST_LEVELS) {
            return Optional.empty();
        }
        double[][] x = new double[decided.length][];
        for (int i = 0; i < x.length; i++) {
            x[i] = new double[] {1, decided[i].number().orElseThrow()};
        }
        return of(
                x,
                IntStream.range(0, x.length).map(i -> decided[i].counted()).toArray(),
                IntStream.range(0, x.length)
                        .map(i -> decided[i].counted() + decided[i].failed())
                        .toArray());
    }

    private static Optional<YieldCurve> of(double[][] x, int[] came, int[] decided) {
        return FirthLogistic.fit(x, came, decided)
                .value()
                .map(fit -> new YieldCurve(
                        fit.coefficients()[0], fit.coefficients()[1], fit.low(1), fit.high(1), fit.p(1)));
    }
}
