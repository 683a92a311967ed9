package org.berrywatt.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.util.CombinatoricsUtils;

/** Scores and their groups, block after block; blocks that hold one group alone are left out, since they tell nothing. */
final class Blocks {

    private final List<Block> all;

    private Blocks(List<Block> all) {
        this.all = all;
    }

    /** A block's scores, as deviations from their mean, and the dense number of each one's group. */
    static final class Block {

        final double[] deviations;
        final int[] groups;

        private Block(double[] scores, int[] groups) {
            double mean = Arrays.stream(scores).average().orElse(0);
            this.deviations = Arrays.stream(scores).map(score -> score - mean).toArray();
            this.groups = groups;
        }

        int size() {
            return groups.length;
        }

        double squares() {
            return Arrays.stream(deviations).map(a -> a * a).sum();
        }

        private boolean tells() {
            return Arrays.stream(groups).distinct().limit(2).count() == 2;
        }

        private double logDeals() {
            int[] sorted = groups.clone();
            Arrays.sort(sorted);
            double log = logFactorial(sorted.length);
            for (int start = 0, end; start < sorted.length; start = end) {
                end = start;
                while (end < sorted.length && sorted[end] == sorted[start]) {
                    end++;
                }
                log -= logFactorial(end - start);
            }
            return log;
        }

        private static double logFactorial(int n) {
            return CombinatoricsUtils.factorialLog(n);
        }
    }

    static Blocks telling(double[] scores, int[] groups, int[] blocks) {
        Integer[] order = IntStream.range(0, scores.length).boxed().toArray(Integer[]::new);
        Arrays.sort(order, (i, j) -> Integer.compare(blocks[i], blocks[j]));
        List<Block> telling = new ArrayList<>();
        for (int start = 0, end; start < order.length; start = end) {
            end = start;
            while (end < order.length && blocks[order[end]] == blocks[order[start]]) {
                end++;
            }
            Block block = block(scores, groups, Arrays.copyOfRange(order, start, end));
            if (block.tells()) {
                telling.add(block);
            }
        }
        return new Blocks(telling);
    }

    private static Block block(double[] scores, int[] groups, Integer[] members) {
        return new Block(
                Arrays.stream(members).mapToDouble(i -> scores[i]).toArray(),
                Arrays.stream(members).mapToInt(i -> groups[i]).toArray());
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
        return all.stream()
                        .flatMapToInt(block -> Arrays.stream(block.groups))
                        .max()
                        .orElse(-1)
                + 1;
    }
}
