package org.berrywatt.findings;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.berrywatt.statistics.LinearModel;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * How many times the performance at one level is that at another, block differences taken out: least squares on logarithms
 * less their block's mean. The interval is Student's; the best and the worst of k levels were picked after looking, so it is
 * widened for all k(k - 1)/2 pairs (Bonferroni). For numbers the ratio runs over the whole range that was tried.
 *
 * @param fromLevel key of the level divided by
 * @param toLevel key of the level compared with it
 * @param ratio in (0, ∞)
 * @param low lower end of the 95 % interval
 * @param high upper end
 * @param smallest least ratio that this design shows in four of five classes at p = 0.05, with the spread found here; in (1, ∞)
 * @param spread residual standard deviation of the logarithms
 */
public record Effect(
        String fromLevel, String toLevel, double ratio, double low, double high, double smallest, double spread) {

    private static final int MOST_LEVELS = 12;
    private static final double POWER = 0.8;

    static Optional<Effect> of(Factor factor, Entries entries) {
        if (entries.levelCount() < 2) {
            return Optional.empty();
        }
        return factor.isNumber() && entries.levelCount() > 2 ? slope(factor, entries) : best(factor, entries);
    }

    private static Optional<Effect> slope(Factor factor, Entries entries) {
        int[] codes = entries.levels();
        double[][] x = new double[codes.length][1];
        Arrays.setAll(x, i -> new double[] {factor.number(codes[i]).orElseThrow()});
        int low = Arrays.stream(codes).min().orElseThrow();
        int high = Arrays.stream(codes).max().orElseThrow();
        double range = factor.number(high).orElseThrow() - factor.number(low).orElseThrow();
        return Centred.fit(x, entries)
                .map(model -> of(factor.levels().get(low), factor.levels().get(high), model, 1, range));
    }

    private static Optional<Effect> best(Factor factor, Entries entries) {
        int[] distinct = Arrays.stream(entries.levels()).sorted().distinct().toArray();
        if (distinct.length > MOST_LEVELS) {
            return Optional.empty();
        }
        double[][] x = new double[entries.size()][distinct.length - 1];
        for (int i = 0; i < x.length; i++) {
            int place = Arrays.binarySearch(distinct, entries.levels()[i]);
            if (place > 0) {
                x[i][place - 1] = 1;
            }
        }
        return Centred.fit(x, entries).map(model -> contrast(factor, distinct, model));
    }

    private static Effect contrast(Factor factor, int[] distinct, LinearModel model) {
        double[] coefficients = model.coefficients();
        double[] heights = IntStream.range(0, distinct.length)
                .mapToDouble(place -> place == 0 ? 0 : coefficients[place - 1])
                .toArray();
        // of two levels the second is told against the first; of more, the best against the worst
        int worst = distinct.length == 2 ? 0 : extreme(heights, -1);
        int best = distinct.length == 2 ? 1 : extreme(heights, 1);
        double[] weights = new double[coefficients.length];
        if (best > 0) {
            weights[best - 1] += 1;
        }
        if (worst > 0) {
            weights[worst - 1] -= 1;
        }
        int pairs = distinct.length * (distinct.length - 1) / 2;
        return of(factor.levels().get(distinct[worst]), factor.levels().get(distinct[best]), model, pairs, weights);
    }

    private static int extreme(double[] heights, int sign) {
        int found = 0;
        for (int place = 1; place < heights.length; place++) {
            if (sign * heights[place] > sign * heights[found]) {
                found = place;
            }
        }
        return found;
    }

    private static Effect of(String from, String to, LinearModel model, int pairs, double... weights) {
        double[] coefficients = model.coefficients();
        double log = 0;
        for (int i = 0; i < weights.length; i++) {
            log += weights[i] * coefficients[i];
        }
        TDistribution student = new TDistribution(model.residualDegrees());
        double error = model.standardError(weights);
        double half = error * student.inverseCumulativeProbability(1 - 0.025 / pairs);
        double seen = student.inverseCumulativeProbability(0.975) + student.inverseCumulativeProbability(POWER);
        return new Effect(
                from,
                to,
                Math.exp(log),
                Math.exp(log - half),
                Math.exp(log + half),
                Math.exp(seen * error),
                model.residualDeviation());
    }

    /** Turned round when needed, so that the ratio is 1 or more. */
    Effect upwards() {
        return ratio >= 1 ? this : between(toLevel, fromLevel, 1 / ratio, 1 / high, 1 / low);
    }

    private Effect between(String worse, String better, double upRatio, double upLow, double upHigh) {
        return new Effect(worse, better, upRatio, upLow, upHigh, smallest, spread);
    }
}
