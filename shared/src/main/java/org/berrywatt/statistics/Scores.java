package org.berrywatt.statistics;

import java.util.Arrays;

/** What rank tests look at in place of the values. */
public final class Scores {

    private Scores() {}

    /** Mid-ranks: the smallest of the finite values has 1, equal values share the mean of their ranks. */
    public static double[] ranks(double... values) {
        return Arrays.stream(Ranks.of(values).doubled())
                .mapToDouble(doubled -> doubled / 2.0)
                .toArray();
    }

    /**
     * Ranks of values less their block's mean, so that good and poor blocks can be looked at together. Source: J. L. Hodges and
     * E. L. Lehmann, The Annals of Mathematical Statistics 33 (1962) 482-497.
     *
     * @param values finite
     * @param blocks block of every value, in [0, ∞)
     */
    public static double[] alignedRanks(double[] values, int[] blocks) {
        int count = Arrays.stream(blocks).max().orElse(-1) + 1;
        double[] sums = new double[count];
        int[] sizes = new int[count];
        for (int i = 0; i < values.length; i++) {
            sums[blocks[i]] += values[i];
            sizes[blocks[i]]++;
        }
        double[] aligned = values.clone();
        Arrays.setAll(aligned, i -> tidy(values[i] - sums[blocks[i]] / sizes[blocks[i]]));
        return ranks(aligned);
    }

    /** Differences alike up to the last digits are alike. */
    private static double tidy(double difference) {
        return Math.rint(difference * 1e12) / 1e12;
    }
}
