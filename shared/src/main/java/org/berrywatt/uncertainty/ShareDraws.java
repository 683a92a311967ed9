package org.berrywatt.uncertainty;

import java.util.stream.IntStream;

/**
 * Draws of a share of which k of n trials were seen, by Jeffreys' prior: Beta(k + 1/2, n - k + 1/2). With X and Y independent
 * sums of 2k + 1 and 2(n - k) + 1 squared standard normal deviates (chi-squared), X/(X + Y) has that distribution exactly
 * (NIST/SEMATECH e-Handbook, 1.3.6.6; Johnson, Kotz and Balakrishnan, vol. 2, ch. 25).
 */
public final class ShareDraws {
    private ShareDraws() {}

    /**
     * One draw for each trial, in [0, 1].
     *
     * @param seen k, in [0, n]
     * @param of n, in [1, ∞)
     * @param owner names the share; two shares with one name would have the same luck
     * @throws IllegalArgumentException when k or n is out of its range
     */
    public static double[] of(int seen, int of, Deviates deviates, String owner) {
        if (!(of >= 1 && seen >= 0 && seen <= of)) {
            throw new IllegalArgumentException("a share is k of n with k in [0, n], not " + seen + " of " + of);
        }
        var yes = squares(owner + "/yes", 2 * seen + 1, deviates);
        var no = squares(owner + "/no", 2 * (of - seen) + 1, deviates);
        return IntStream.range(0, deviates.trials())
                .mapToDouble(trial -> yes[trial] / (yes[trial] + no[trial]))
                .toArray();
    }

    private static double[] squares(String stream, int count, Deviates deviates) {
        var sums = new double[deviates.trials()];
        for (int i = 0; i < count; i++) {
            var draws = deviates.fresh(stream + i, Shape.NORMAL, Double.POSITIVE_INFINITY);
            for (int trial = 0; trial < sums.length; trial++) {
                sums[trial] += draws[trial] * draws[trial];
            }
        }
        return sums;
    }
}
