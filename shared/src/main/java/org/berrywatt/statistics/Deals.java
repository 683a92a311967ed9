package org.berrywatt.statistics;

import java.util.stream.IntStream;
import org.hipparchus.util.CombinatoricsUtils;

/** All ways to deal ranked observations to groups of given sizes; the actual deal is the ranking's own order. */
final class Deals {

    /** Up to this many deals are looked at one by one. */
    static final int FEW = 200_000;

    private final Ranks ranks;
    private final int[] sizes;
    private final int[] room;
    private final long[] sums;

    Deals(Ranks ranks, int[] sizes) {
        this.ranks = ranks;
        this.sizes = sizes;
        this.room = sizes.clone();
        this.sums = new long[sizes.length];
    }

    boolean areFew() {
        return logCount() <= Math.log(FEW);
    }

    private double logCount() {
        return CombinatoricsUtils.factorialLog(ranks.size())
                - IntStream.of(sizes)
                        .mapToDouble(CombinatoricsUtils::factorialLog)
                        .sum();
    }

    /** Spread of the actual groups' mean ranks, weighted by size, in the unit of {@link Ranks#spread()}. */
    double dealtSpread() {
        long[] actual = new long[sizes.length];
        int next = 0;
        for (int group = 0; group < sizes.length; group++) {
            for (int i = 0; i < sizes[group]; i++) {
                actual[group] += deviation(next++);
            }
        }
        return spread(actual);
    }

    /** Share of all deals whose spread is at least the actual one. */
    double shareAsSpread() {
        // sums of equal squares may differ in the last digits with the order of groups
        double least = dealtSpread() * (1 - 1e-12);
        return count(0, least) / Math.rint(Math.exp(logCount()));
    }

    private long count(int next, double least) {
        if (next == ranks.size()) {
            return spread(sums) >= least ? 1 : 0;
        }
        long found = 0;
        for (int group = 0; group < sizes.length; group++) {
            found += room[group] > 0 ? countWith(group, next, least) : 0;
        }
        return found;
    }

    private long countWith(int group, int next, double least) {
        room[group]--;
        sums[group] += deviation(next);
        long found = count(next + 1, least);
        sums[group] -= deviation(next);
        room[group]++;
        return found;
    }

    private long deviation(int index) {
        return ranks.doubled(index) - ranks.size() - 1;
    }

    private double spread(long[] groupSums) {
        double spread = 0;
        for (int group = 0; group < sizes.length; group++) {
            spread += (double) groupSums[group] * groupSums[group] / sizes[group];
        }
        return spread;
    }
}
