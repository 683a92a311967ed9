package org.berrywatt.uncertainty;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Random deviates in named streams: the same seed, number of trials and name give the same draws in every place and in
 * whatever order they are asked for. So two results that name the same cause are moved by it together, trial by trial, and
 * all others move apart.
 *
 * <p>A deviate has mean 0 and standard uncertainty 1 in the sense of {@link Input#standardUncertainty()}: a trial of an input
 * is {@code value + standardUncertainty * deviate}.
 *
 * <p>Streams asked for are remembered up to {@value #MOST_REMEMBERED} numbers (8 MB), the longest unused forgotten first. Safe
 * for use by several threads.
 */
public final class Deviates {
    private static final int MOST_REMEMBERED = 1_000_000;

    private final long seed;
    private final int trials;
    private final Map<Stream, double[]> remembered = new LinkedHashMap<>(16, 0.75f, true);

    private record Stream(String name, Shape shape, double degreesOfFreedom) {}

    /**
     * Draws by a seed.
     *
     * @param trials in [1, ∞)
     * @throws IllegalArgumentException when there is no trial
     */
    public Deviates(long seed, int trials) {
        if (trials < 1) {
            throw new IllegalArgumentException("trials must lie in [1, infinity), not " + trials);
        }
        this.seed = seed;
        this.trials = trials;
    }

    public int trials() {
        return trials;
    }

    /**
     * The draws of a stream, one for each trial; shared, so not to be changed.
     *
     * @param degreesOfFreedom in (0, ∞]; matters to {@link Shape#STUDENT} alone
     */
    public synchronized double[] of(String stream, Shape shape, double degreesOfFreedom) {
        double[] draws = remembered.computeIfAbsent(
                new Stream(stream, shape, degreesOfFreedom), key -> fresh(stream, shape, degreesOfFreedom));
        forgetSome();
        return draws;
    }

    /** The same draws, made anew and not remembered: for streams that nobody else will ask for. */
    double[] fresh(String stream, Shape shape, double degreesOfFreedom) {
        var draw = Draw.of(shape, degreesOfFreedom, RandomSource.XO_SHI_RO_256_PP.create(hash(stream)));
        double[] draws = new double[trials];
        Arrays.setAll(draws, trial -> draw.next());
        return draws;
    }

    private void forgetSome() {
        var longestUnused = remembered.keySet().iterator();
        while (remembered.size() > 1 && (long) remembered.size() * trials > MOST_REMEMBERED) {
            longestUnused.next();
            longestUnused.remove();
        }
    }

    /** 64-bit FNV-1a over the name's characters, started from the seed. */
    private long hash(String stream) {
        long hash = 0xcbf29ce484222325L ^ Long.rotateLeft(seed * 0x9e3779b97f4a7c15L, 31);
        for (int i = 0; i < stream.length(); i++) {
            hash = (hash ^ stream.charAt(i)) * 0x100000001b3L;
        }
        return hash;
    }
}
