package org.berrywatt.server.findings;

import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Some of many, spread evenly: one of every stretch, by chance, since a file may repeat its levels in a rhythm. The same size is
 * always picked from alike.
 */
final class Picked {

    private static final long SEED = 19;

    private Picked() {}

    /**
     * Indices in ascending order; all of them where they are few enough.
     *
     * @param size of what is picked from, in [0, ∞)
     * @param most in [1, ∞)
     */
    static IntStream of(int size, int most) {
        var random = new SplittableRandom(SEED);
        var count = Math.min(most, size);
        return IntStream.range(0, count).map(i -> random.nextInt(start(i, size, count), start(i + 1, size, count)));
    }

    private static int start(int stretch, int size, int count) {
        return (int) ((long) stretch * size / count);
    }
}
