package org.berrywatt.statistics;

/** All n! pairings of two rankings, one by one. */
final class Pairings {

    private final Ranks x;
    private final long[] y;
    private final boolean[] taken;

    Pairings(Ranks x, Ranks y) {
        this.x = x;
        this.y = y.doubled();
        this.taken = new boolean[this.y.length];
    }

    /** How many pairings have a sum of products of deviations (in doubled ranks) of at least this size, either sign. */
    long countAtLeast(long size) {
        return count(0, 0, size);
    }

    private long count(int next, long sum, long size) {
        if (next == y.length) {
            return Math.abs(sum) >= size ? 1 : 0;
        }
        long extreme = 0;
        for (int i = 0; i < y.length; i++) {
            extreme += taken[i] ? 0 : countWith(i, next, sum, size);
        }
        return extreme;
    }

    private long countWith(int partner, int next, long sum, long size) {
        long mean = y.length + 1L;
        taken[partner] = true;
        long extreme = count(next + 1, sum + (x.doubled(next) - mean) * (y[partner] - mean), size);
        taken[partner] = false;
        return extreme;
    }
}
