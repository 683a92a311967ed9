package org.berrywatt.statistics;

import org.hipparchus.special.Gamma;

/** The chi-squared distribution. */
final class ChiSquared {

    private ChiSquared() {}

    /**
     * Chance of a value beyond one that was seen; 0 where it is below the smallest double.
     *
     * @param degreesOfFreedom in [1, infinity)
     * @param seen in [0, infinity)
     */
    static double beyond(int degreesOfFreedom, double seen) {
        double tail = Gamma.regularizedGammaQ(degreesOfFreedom / 2.0, seen / 2);
        return Double.isNaN(tail) && seen > degreesOfFreedom ? 0 : tail;
    }
}
