package org.berrywatt.statistics;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** The ratio of group to residual variance at which the restricted likelihood is greatest. */
final class InterceptRatio {

    private static final int LOOKS = 60;
    private static final double LEAST = 1e-5;
    private static final double MOST = 1e7;
    private static final double LOG_STEP = Math.log(MOST / LEAST) / LOOKS;

    private InterceptRatio() {}

    /** Looks along the whole range first, since a criterion may have two valleys. */
    static double best(InterceptSums sums) {
        double best = 0;
        double least = new InterceptCriterion(sums, 0).value();
        for (int look = 0; look <= LOOKS; look++) {
            double ratio = LEAST * Math.exp(look * LOG_STEP);
            double value = new InterceptCriterion(sums, ratio).value();
            if (value < least) {
                least = value;
                best = ratio;
            }
        }
        return refine(sums, best);
    }

    private static double refine(InterceptSums sums, double near) {
        double low = near == 0 ? 0 : near * Math.exp(-LOG_STEP);
        double high = near == 0 ? LEAST : near * Math.exp(LOG_STEP);
        double slopeLow = slope(sums, low);
        if (slopeLow >= 0 && near == 0) {
            return 0;
        }
        return slopeLow < 0 && slope(sums, high) > 0
                ? new BracketingNthOrderBrentSolver(1e-13, 1e-15, 1e-15, 5)
                        .solve(200, ratio -> slope(sums, ratio), low, high)
                : near;
    }

    private static double slope(InterceptSums sums, double ratio) {
        return new InterceptCriterion(sums, ratio).derivative();
    }
}
