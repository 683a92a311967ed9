package org.berrywatt.statistics;

import java.util.function.LongConsumer;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * How much chance is drawn where it cannot be counted, and who is told.
 *
 * @param draws rearrangements or resamples for each question, in [0, ∞); 0 leaves all to large-sample distributions
 * @param seed of the draws: the same seed gives the same answer
 * @param watch hears how many draws were made since it was last told; what it throws ends the work
 */
public record Resampling(int draws, long seed, LongConsumer watch) {

    private static final int CLASS_DAY = 9_999;

    /** Draws for the cells of a class. */
    public static Resampling seeded(long seed) {
        return new Resampling(CLASS_DAY, seed, done -> {});
    }

    /** No draws at all. */
    public static Resampling none() {
        return new Resampling(0, 0, done -> {});
    }

    UniformRandomProvider random() {
        return RandomSource.XO_SHI_RO_256_PP.create(seed);
    }

    void tell(long done) {
        watch.accept(done);
    }
}
