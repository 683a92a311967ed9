package org.berrywatt.plan;

import org.hipparchus.distribution.discrete.PoissonDistribution;
import org.hipparchus.special.Beta;

/**
 * The noncentral F distribution: what an F test's statistic does when there is something to be found.
 *
 * <p>P(F &lt;= x) = sum over j of Poisson(j; lambda/2) I_y(d1/2 + j, d2/2), y = d1 x / (d1 x + d2), I the regularised
 * incomplete beta function; summed outwards from the commonest j. Source: N. L. Johnson, S. Kotz, N. Balakrishnan,
 * Continuous Univariate Distributions, volume 2, 2nd edition 1995, chapter 30.
 */
public final class NoncentralF {

    private static final double NEGLIGIBLE = 1e-17;

    private NoncentralF() {}

    /**
     * Chance of a value of at most x.
     *
     * @param x in [0, infinity)
     * @param d1 degrees of freedom of what is looked for, in (0, infinity)
     * @param d2 degrees of freedom of chance, in (0, infinity)
     * @param lambda noncentrality, in [0, infinity)
     */
    public static double cumulative(double x, double d1, double d2, double lambda) {
        double y = d1 * x / (d1 * x + d2);
        if (lambda == 0) {
            return Beta.regularizedBeta(y, d1 / 2, d2 / 2);
        }
        var weights = new PoissonDistribution(lambda / 2);
        int commonest = (int) (lambda / 2);
        double sum = 0;
        for (int j = commonest; j >= 0 && weights.probability(j) > NEGLIGIBLE; j--) {
            sum += weights.probability(j) * Beta.regularizedBeta(y, d1 / 2 + j, d2 / 2);
        }
        for (int j = commonest + 1; weights.probability(j) > NEGLIGIBLE; j++) {
            sum += weights.probability(j) * Beta.regularizedBeta(y, d1 / 2 + j, d2 / 2);
        }
        return Math.min(1, sum);
    }
}
