package org.berrywatt.uncertainty;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Coverage factors of Student's t (JCGM 100:2008, table G.2). */
public final class Student {
    private Student() {}

    /**
     * How many standard uncertainties on either side hold a result with a probability.
     *
     * @param probability in (0, 1)
     * @param degreesOfFreedom in (0, ∞]; ∞ is the normal distribution
     * @throws IllegalArgumentException when one of them is outside its range
     */
    public static double factor(double probability, double degreesOfFreedom) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("a probability of coverage lies in (0, 1), not " + probability);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom lie in (0, infinity], not " + degreesOfFreedom);
        }
        double below = (1 + probability) / 2;
        return Double.isInfinite(degreesOfFreedom)
                ? new NormalDistribution().inverseCumulativeProbability(below)
                : new TDistribution(degreesOfFreedom).inverseCumulativeProbability(below);
    }
}
