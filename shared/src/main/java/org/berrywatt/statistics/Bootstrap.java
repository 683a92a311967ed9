package org.berrywatt.statistics;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Bias-corrected and accelerated (BCa) bootstrap interval of any figure of a sample.
 *
 * <p>The sample is drawn anew with replacement; the interval lies between the quantiles Phi(z0 + (z0 + z)/(1 - a(z0 + z))) of
 * the drawn figures, z = ± 1.96, where z0 tells how far the figure is from their middle (ties count half) and a is the
 * acceleration found by leaving out one observation at a time. Source: B. Efron, Journal of the American Statistical
 * Association 82 (1987) 171-185; B. Efron and R. J. Tibshirani, An Introduction to the Bootstrap (1993), chapter 14.
 *
 * @param low lower end
 * @param high upper end
 * @param acceleration a
 * @param bias z0
 */
public record Bootstrap(double low, double high, double acceleration, double bias) {

    private static final NormalDistribution NORMAL = new NormalDistribution();
    private static final int TOLD_EVERY = 500;

    /**
     * The interval of a figure.
     *
     * @param n observations, in [2, ∞)
     * @param figure of the observations with the given indices, finite
     * @param confidence in (0, 1)
     * @return empty when no draws are wanted, or when all draws give one and the same figure
     */
    public static Optional<Bootstrap> bca(int n, ToDoubleFunction<int[]> figure, double confidence, Resampling draws) {
        double[] drawn = draw(n, figure, draws);
        if (drawn.length == 0 || drawn[0] == drawn[drawn.length - 1]) {
            return Optional.empty();
        }
        double bias = bias(drawn, figure.applyAsDouble(all(n)));
        double acceleration = acceleration(n, figure);
        double z = NORMAL.inverseCumulativeProbability((1 + confidence) / 2);
        return Optional.of(
                new Bootstrap(at(drawn, bias, acceleration, -z), at(drawn, bias, acceleration, z), acceleration, bias));
    }

    private static double[] draw(int n, ToDoubleFunction<int[]> figure, Resampling draws) {
        UniformRandomProvider random = draws.random();
        double[] drawn = new double[draws.draws()];
        int[] indices = new int[n];
        for (int i = 0; i < drawn.length; i++) {
            Arrays.setAll(indices, j -> random.nextInt(n));
            drawn[i] = figure.applyAsDouble(indices);
            if (i % TOLD_EVERY == TOLD_EVERY - 1) {
                draws.tell(TOLD_EVERY);
            }
        }
        Arrays.sort(drawn);
        return drawn;
    }

    /** Kept off the ends, where the normal quantile is infinite. */
    private static double bias(double[] drawn, double found) {
        double below = 0;
        for (double figure : drawn) {
            below += figure < found ? 1 : figure == found ? 0.5 : 0;
        }
        double share = Math.min(drawn.length - 0.5, Math.max(0.5, below)) / drawn.length;
        return NORMAL.inverseCumulativeProbability(share);
    }

    private static double acceleration(int n, ToDoubleFunction<int[]> figure) {
        double[] without = IntStream.range(0, n)
                .mapToDouble(left -> figure.applyAsDouble(
                        IntStream.range(0, n).filter(i -> i != left).toArray()))
                .toArray();
        double mean = Arrays.stream(without).average().orElseThrow();
        double squares =
                Arrays.stream(without).map(v -> (mean - v) * (mean - v)).sum();
        double cubes = Arrays.stream(without).map(v -> Math.pow(mean - v, 3)).sum();
        return squares == 0 ? 0 : cubes / (6 * Math.pow(squares, 1.5));
    }

    private static double at(double[] drawn, double bias, double acceleration, double z) {
        double moved = bias + (bias + z) / (1 - acceleration * (bias + z));
        return Quantiles.ofSorted(NORMAL.cumulativeProbability(moved), drawn);
    }

    private static int[] all(int n) {
        return IntStream.range(0, n).toArray();
    }
}
