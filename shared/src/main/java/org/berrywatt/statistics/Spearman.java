package org.berrywatt.statistics;

import org.berrywatt.statistics.Answer.Given;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.util.CombinatoricsUtils;

/**
 * Spearman's rank correlation: Pearson's correlation of mid-ranks, so ties are right without a correction.
 *
 * <p>Up to {@value #EXACT_UP_TO} pairs p is the share of all n! pairings that are at least as far from zero. Beyond, t =
 * rho sqrt((n - 2)/(1 - rho^2)) is taken as Student-distributed with n - 2 degrees of freedom, and p is never put below
 * 2/n!, the least that any pairing can reach. Source: M. Hollander and D. A. Wolfe, Nonparametric Statistical Methods
 * (1973), chapter 8.
 *
 * @param rho the correlation, in [-1, 1]
 * @param p two-sided, in (0, 1]
 * @param n number of pairs, 3 or more
 * @param evaluation how p was found
 */
public record Spearman(double rho, double p, int n, Evaluation evaluation) {

    private static final int EXACT_UP_TO = 9;

    /**
     * Correlates pairs.
     *
     * @return no answer for fewer than three pairs, numbers that are not finite, or one side all equal
     * @throws IllegalArgumentException when the arrays differ in length
     */
    public static Answer<Spearman> of(double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException("pairs need as many x as y, got " + x.length + " and " + y.length);
        }
        if (!Ranks.allFinite(x) || !Ranks.allFinite(y)) {
            return new Withheld<>(Reason.NOT_FINITE);
        }
        return x.length < 3 ? new Withheld<>(Reason.TOO_FEW) : correlate(Ranks.of(x), Ranks.of(y));
    }

    private static Answer<Spearman> correlate(Ranks x, Ranks y) {
        if (x.spread() == 0 || y.spread() == 0) {
            return new Withheld<>(Reason.ALL_EQUAL);
        }
        int n = x.size();
        double rho = codeviation(x, y) / Math.sqrt((double) x.spread() * y.spread());
        return new Given<>(
                n <= EXACT_UP_TO
                        ? new Spearman(rho, exactP(x, y), n, Evaluation.EXACT)
                        : new Spearman(rho, studentP(rho, n), n, Evaluation.APPROXIMATE));
    }

    private static long codeviation(Ranks x, Ranks y) {
        long sum = 0;
        for (int i = 0; i < x.size(); i++) {
            sum += (x.doubled(i) - x.size() - 1) * (y.doubled(i) - y.size() - 1);
        }
        return sum;
    }

    private static double exactP(Ranks x, Ranks y) {
        long extreme = new Pairings(x, y).countAtLeast(Math.abs(codeviation(x, y)));
        return extreme / CombinatoricsUtils.factorialDouble(x.size());
    }

    private static double studentP(double rho, int n) {
        double t = Math.abs(rho) * Math.sqrt((n - 2) / (1 - rho * rho));
        double p = 2 * new TDistribution(n - 2).cumulativeProbability(-t);
        return Math.max(p, 2 / CombinatoricsUtils.factorialDouble(n));
    }
}
