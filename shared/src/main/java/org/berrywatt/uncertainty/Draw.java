package org.berrywatt.uncertainty;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.TSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** Draws one deviate after another from a generator of equally likely numbers. */
@FunctionalInterface
interface Draw {
    double next();

    /** Deviates of a shape with mean 0 and standard uncertainty 1 (JCGM 101:2008, 6.4.2 to 6.4.9). */
    static Draw of(Shape shape, double degreesOfFreedom, UniformRandomProvider random) {
        return switch (shape) {
            case NORMAL -> ZigguratSampler.NormalizedGaussian.of(random)::sample;
            case RECTANGULAR -> () -> Math.sqrt(3) * (2 * random.nextDouble() - 1);
            case TRIANGULAR -> () -> Math.sqrt(6) * (random.nextDouble() + random.nextDouble() - 1);
            case ARCSINE -> () -> Math.sqrt(2) * Math.sin(2 * Math.PI * random.nextDouble());
            case STUDENT -> TSampler.of(random, degreesOfFreedom)::sample;
        };
    }
}
