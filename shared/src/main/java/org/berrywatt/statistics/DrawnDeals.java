package org.berrywatt.statistics;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.berrywatt.statistics.Blocks.Block;

/** Deals of the scores within their blocks, drawn at random. */
final class DrawnDeals {

    private static final int TOLD_EVERY = 1_000;

    private final Blocks blocks;
    private final DealtSums statistic;
    private final Resampling resampling;

    DrawnDeals(Blocks blocks, DealtSums statistic, Resampling resampling) {
        this.blocks = blocks;
        this.statistic = statistic;
        this.resampling = resampling;
    }

    /** How many of the deals drawn have a statistic at least this large. */
    long countAtLeast(double least) {
        UniformRandomProvider random = resampling.random();
        double[] sums = new double[blocks.groupCount()];
        long reached = 0;
        for (int draw = 1; draw <= resampling.draws(); draw++) {
            Arrays.fill(sums, 0);
            blocks.all().forEach(block -> deal(block, sums, random));
            reached += statistic.statistic(sums) >= least ? 1 : 0;
            if (draw % TOLD_EVERY == 0) {
                resampling.tell(TOLD_EVERY);
            }
        }
        return reached;
    }

    /** Shuffles in place: any order is as good a start as any other. */
    private static void deal(Block block, double[] sums, UniformRandomProvider random) {
        double[] deviations = block.deviations;
        for (int i = deviations.length - 1; i >= 0; i--) {
            int other = random.nextInt(i + 1);
            double dealt = deviations[other];
            deviations[other] = deviations[i];
            deviations[i] = dealt;
            sums[block.groups[i]] += dealt;
        }
    }
}
