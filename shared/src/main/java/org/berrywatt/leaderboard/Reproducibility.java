package org.berrywatt.leaderboard;

import java.util.Collection;
import org.hipparchus.stat.StatUtils;
import org.jspecify.annotations.Nullable;

/** How alike a team's cells are. */
public final class Reproducibility {
    private Reproducibility() {}

    /**
     * How many times results typically differ: the exponential of the standard deviation of their logarithms, in [1, ∞).
     *
     * @param results in any order; those that are not above 0 are left out
     * @return null for fewer than two results above 0
     */
    public static @Nullable Double geometricDeviation(Collection<Double> results) {
        double[] logarithms = results.stream()
                .mapToDouble(Double::doubleValue)
                .filter(value -> value > 0)
                .sorted()
                .map(Math::log)
                .toArray();
        return logarithms.length < 2 ? null : Math.exp(Math.sqrt(StatUtils.variance(logarithms)));
    }
}
