package org.berrywatt.statistics;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Quantiles by linear interpolation between order statistics, definition 7 of R. J. Hyndman and Y. Fan, The American
 * Statistician 50 (1996) 361-365.
 */
public final class Quantiles {

    private Quantiles() {}

    /** The middle number, or the mean of the two in the middle; empty for no numbers or any that is not finite. */
    public static OptionalDouble median(double... values) {
        return quantile(0.5, values);
    }

    /**
     * The number below which a share of the sample lies; empty for no numbers or any that is not finite.
     *
     * @param share in [0, 1]
     * @throws IllegalArgumentException when the share is outside [0, 1]
     */
    public static OptionalDouble quantile(double share, double... values) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share must lie in [0, 1], got " + share);
        }
        return values.length == 0 || !Ranks.allFinite(values)
                ? OptionalDouble.empty()
                : OptionalDouble.of(interpolated(share, values));
    }

    private static double interpolated(double share, double[] values) {
        double[] rising = values.clone();
        Arrays.sort(rising);
        return ofSorted(share, rising);
    }

    /** The same for numbers already in rising order, finite and at least one. */
    static double ofSorted(double share, double[] rising) {
        double position = share * (rising.length - 1);
        int below = (int) Math.floor(position);
        int above = Math.min(below + 1, rising.length - 1);
        return rising[below] + (position - below) * (rising[above] - rising[below]);
    }
}
