package org.berrywatt.plan;

import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.distribution.continuous.FDistribution;

/**
 * How often an F test at 5 % finds what is there. Source: J. Cohen, Statistical Power Analysis for the Behavioral Sciences,
 * 2nd edition 1988, chapter 8.
 */
public final class Power {

    /** How often a plan should find what it looks for: the usual choice (Cohen 1988; from memory). */
    public static final double WANTED = 0.8;

    private static final double ALPHA = 0.05;
    private static final double LARGEST = 1e4;

    private Power() {}

    /**
     * Chance of finding an effect.
     *
     * @param d1 differences looked for at once, 1 or more
     * @param d2 spare cells, 1 or more
     * @param lambda noncentrality, in [0, infinity)
     */
    public static double of(int d1, int d2, double lambda) {
        double critical = new FDistribution(d1, d2).inverseCumulativeProbability(1 - ALPHA);
        return 1 - NoncentralF.cumulative(critical, d1, d2, lambda);
    }

    /** The noncentrality that is found {@value #WANTED} of the time. */
    public static double wantedNoncentrality(int d1, int d2) {
        double critical = new FDistribution(d1, d2).inverseCumulativeProbability(1 - ALPHA);
        double high = 8;
        while (high < LARGEST && NoncentralF.cumulative(critical, d1, d2, high) > 1 - WANTED) {
            high *= 2;
        }
        return new BrentSolver(1e-9)
                .solve(200, lambda -> 1 - WANTED - NoncentralF.cumulative(critical, d1, d2, lambda), 0, high);
    }
}
