package org.berrywatt.statistics;

import java.util.Arrays;
import org.berrywatt.statistics.Answer.Given;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.hipparchus.linear.RealMatrix;

/**
 * Linear mixed model with one random intercept, y = b0 + X b + group + e, fitted by restricted maximum likelihood (REML).
 *
 * <p>The criterion is profiled down to the ratio of the two variances, and the ratio is where its derivative is zero, or zero
 * itself. Groups enter by their sums, so a step costs as much as there are group sizes, not rows. Sources: H. D. Patterson and
 * R. Thompson, Biometrika 58 (1971) 545-554; J. C. Pinheiro and D. M. Bates, Mixed-Effects Models in S and S-PLUS (2000),
 * chapter 2.
 */
public final class RandomIntercept {

    private final InterceptCriterion at;
    private final InterceptSums sums;

    private RandomIntercept(InterceptSums sums, double ratio) {
        this.sums = sums;
        this.at = new InterceptCriterion(sums, ratio);
    }

    /**
     * Fits columns.
     *
     * @param columns explaining columns without the intercept, each as long as y; may be none
     * @param y the outcome
     * @param groups group of every row, in [0, ∞)
     * @return no answer for numbers that are not finite, fewer than two groups, no row beyond the coefficients, no spread left
     *     by the columns, or columns that depend on each other
     */
    public static Answer<RandomIntercept> fit(double[][] columns, double[] y, int[] groups) {
        if (!Ranks.allFinite(y) || !Arrays.stream(columns).allMatch(Ranks::allFinite)) {
            return new Withheld<>(Reason.NOT_FINITE);
        }
        if (y.length < columns.length + 2) {
            return new Withheld<>(Reason.TOO_FEW);
        }
        InterceptSums sums = InterceptSums.of(columns, y, groups);
        if (sums.groupCount() < 2) {
            return new Withheld<>(Reason.ONE_GROUP);
        }
        if (!sums.areIndependent()) {
            return new Withheld<>(Reason.DEPENDENT_COLUMNS);
        }
        return new InterceptCriterion(sums, 0).leftSquares() <= 1e-20 * sums.squares()
                ? new Withheld<>(Reason.ALL_EQUAL)
                : new Given<>(new RandomIntercept(sums, InterceptRatio.best(sums)));
    }

    /** Of the groups, in [0, ∞). */
    public double groupVariance() {
        return at.ratio() * residualVariance();
    }

    public double residualVariance() {
        return at.variance();
    }

    /** Minus twice the restricted log likelihood. */
    public double criterion() {
        return at.value();
    }

    /** The intercept first, then every column's. */
    public double[] coefficients() {
        return sums.columns().toOriginal(at.coefficients());
    }

    public double[] standardErrors() {
        RealMatrix covariance = covariance();
        double[] errors = new double[covariance.getRowDimension()];
        Arrays.setAll(errors, i -> Math.sqrt(covariance.getEntry(i, i)));
        return errors;
    }

    /** Of the coefficients, intercept first. */
    public RealMatrix covariance() {
        RealMatrix back = sums.columns().back();
        return back.multiply(at.inverse().scalarMultiply(residualVariance())).multiply(back.transpose());
    }

    public int groupCount() {
        return sums.groupCount();
    }
}
