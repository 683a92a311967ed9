package org.berrywatt.statistics;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * A share of successes with Wilson's score interval, which stays within [0, 1] and says something even of 0 of 3.
 *
 * <p>Limits (p + z²/2n ± z sqrt(p(1 - p)/n + z²/4n²)) / (1 + z²/n). Source: E. B. Wilson, Journal of the American Statistical
 * Association 22 (1927) 209-212; recommended by L. D. Brown, T. T. Cai and A. DasGupta, Statistical Science 16 (2001) 101-133.
 *
 * @param successes in [0, n]
 * @param n in [1, ∞)
 * @param low lower limit, in [0, share]
 * @param high upper limit, in [share, 1]
 */
public record Proportion(int successes, int n, double low, double high) {

    /**
     * Share with its interval.
     *
     * @param confidence in (0, 1)
     * @throws IllegalArgumentException when n is below 1, the successes are outside [0, n] or the confidence outside (0, 1)
     */
    public static Proportion wilson(int successes, int n, double confidence) {
        if (n < 1 || successes < 0 || successes > n) {
            throw new IllegalArgumentException(
                    "successes must lie in [0, n] and n in [1, infinity), got " + successes + " of " + n);
        }
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("confidence must lie in (0, 1), got " + confidence);
        }
        double z = new NormalDistribution().inverseCumulativeProbability((1 + confidence) / 2);
        double p = (double) successes / n;
        double half = z * Math.sqrt(p * (1 - p) / n + z * z / (4.0 * n * n));
        double scale = 1 + z * z / n;
        double middle = p + z * z / (2 * n);
        // the ends are exact where all or none succeed; the formula leaves a last digit there
        return new Proportion(
                successes,
                n,
                successes == 0 ? 0 : Math.max(0, (middle - half) / scale),
                successes == n ? 1 : Math.min(1, (middle + half) / scale));
    }

    public double share() {
        return (double) successes / n;
    }
}
