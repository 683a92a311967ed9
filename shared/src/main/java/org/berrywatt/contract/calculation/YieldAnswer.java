package org.berrywatt.contract.calculation;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Shares that worked.
 *
 * @param fisher do the rows share one rate? Null when all or none worked, or for one row
 * @param logistic for values, the penalised logistic curve; null where it cannot be fitted
 */
public record YieldAnswer(
        List<Share> rows, @Nullable Exact fisher, @Nullable Logistic logistic) {

    /** A share in [0, 1] with Wilson's 95 % interval. */
    public record Share(
            @Nullable String level,
            @Nullable Double value,
            int made,
            int worked,
            double share,
            double low,
            double high) {}

    /**
     * Fisher's exact test, two-sided.
     *
     * @param evaluation {@code "exact"} or {@code "approximate"}
     */
    public record Exact(double p, String evaluation) {}

    /** Log odds = intercept + slope times value, Firth's penalty. */
    public record Logistic(double penalisedLogLikelihood, List<Coefficient> coefficients) {}

    /** With its 95 % profile interval and the p of its penalised likelihood ratio. */
    public record Coefficient(String name, double estimate, double standardError, double low, double high, double p) {}
}
