package org.berrywatt.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.util.CombinatoricsUtils.FactorialLog;

/** Scores and their groups, block after block; blocks that hold one group alone are left out, since they tell nothing. */
final class Blocks {

    /** Most blocks are teams of a few cells. */
    private static final FactorialLog LOG_FACTORIAL = FactorialLog.create().withCache(100);

    private final List<Block> all;

    private Blocks(List<Block> all) {
        this.all = all;
    }

    /** A block's scores, as deviations from their mean, and the dense number of each one's group. */
    static final class Block {

        final double[] deviations;
        final int[] groups;

        private Block(double[] deviations, int[] groups) {
            this.deviations = deviations;
            this.groups = groups;
        }

        int size() {
            return groups.length;
        }

        double squares() {
            double sum = 0;
            for (double deviation : deviations) {
                sum += deviation * deviation;
            }
            return sum;
        }

        private boolean tells() {
            for (int group : groups) {
                if (group != groups[0]) {
                    return true;
                }
            }
            return false;
        }

        private double logDeals() {
            int[] sorted = groups.clone();
            Arrays.sort(sorted);
            double log = LOG_FACTORIAL.value(sorted.length);
            for (int start = 0, end; start < sorted.length; start = end) {
                end = start;
                while (end < sorted.length && sorted[end] == sorted[start]) {
                    end++;
                }
                log -= LOG_FACTORIAL.value(end - start);
            }
            return log;
        }
    }

    static Blocks telling(double[] scores, int[] groups, int[] blocks) {
        List<Block> telling = new ArrayList<>();
        for (int[] own : Members.of(blocks)) {
            Block block = block(scores, groups, own);
            if (block.tells()) {
                telling.add(block);
            }
        }
        return new Blocks(telling);
    }

    private static Block block(double[] scores, int[] groups, int[] members) {
        double[] deviations = new double[members.length];
        int[] own = new int[members.length];
        double sum = 0;
        for (int i = 0; i < members.length; i++) {
            deviations[i] = scores[members[i]];
            own[i] = groups[members[i]];
            sum += deviations[i];
        }
        double mean = sum / members.length;
        for (int i = 0; i < deviations.length; i++) {
            deviations[i] -= mean;
        }
        return new Block(deviations, own);
    }

    List<Block> all() {
        return all;
    }

    int count() {
        return all.size();
    }

    int size() {
        return all.stream().mapToInt(Block::size).sum();
    }

    double logDeals() {
        return all.stream().mapToDouble(Block::logDeals).sum();
    }

    int groupCount() {
        int most = -1;
        for (Block block : all) {
            for (int group : block.groups) {
                most = Math.max(most, group);
            }
        }
        return most + 1;
    }
}
