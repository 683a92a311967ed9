package org.berrywatt.statistics;

import org.berrywatt.statistics.Blocks.Block;

/** All ways to deal the scores of every block to the places of its groups, one by one. */
final class BlockDeals {

    private final Blocks blocks;
    private final DealtSums statistic;
    private final double[] sums;
    private final int[][] room;
    private double least;
    private long reached;
    private long dealt;

    BlockDeals(Blocks blocks, DealtSums statistic) {
        this.blocks = blocks;
        this.statistic = statistic;
        this.sums = new double[blocks.groupCount()];
        this.room = new int[blocks.count()][sums.length];
        for (int block = 0; block < room.length; block++) {
            for (int group : blocks.all().get(block).groups) {
                room[block][group]++;
            }
        }
    }

    /** Share of deals whose statistic is at least this large. */
    double shareAtLeast(double size) {
        least = size;
        deal(0, 0);
        return (double) reached / dealt;
    }

    private void deal(int block, int next) {
        if (block == room.length) {
            dealt++;
            reached += statistic.statistic(sums) >= least ? 1 : 0;
            return;
        }
        Block at = blocks.all().get(block);
        if (next == at.size()) {
            deal(block + 1, 0);
            return;
        }
        for (int group = 0; group < sums.length; group++) {
            if (room[block][group] > 0) {
                dealTo(group, block, next, at.deviations[next]);
            }
        }
    }

    private void dealTo(int group, int block, int next, double deviation) {
        double before = sums[group];
        room[block][group]--;
        sums[group] = before + deviation;
        deal(block, next + 1);
        sums[group] = before;
        room[block][group]++;
    }
}
