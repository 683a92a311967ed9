package org.berrywatt.demo;

import java.util.List;
import java.util.Random;

/** Chance of one named thing of the day: the same seed and name give the same draws, whatever else is drawn. */
final class Draws {

    private final Random random;

    private Draws(Random random) {
        this.random = random;
    }

    static Draws of(String name) {
        return new Draws(new Random(Scenario.uuid("draws " + name).getLeastSignificantBits()));
    }

    /** A factor around 1 whose logarithm is normal with this standard deviation. */
    double factor(double spread) {
        return StrictMath.exp(spread * random.nextGaussian());
    }

    boolean happens(double probability) {
        return random.nextDouble() < probability;
    }

    /** A whole number in [low, high]. */
    int between(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    <T> T oneOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
