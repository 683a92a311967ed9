package org.berrywatt.findings;

import java.util.Arrays;
import java.util.Optional;

/**
 * Simpson's check of two levels: does the level that looks better over all cells do worse where cells are compared within the
 * same group? Source: E. H. Simpson, Journal of the Royal Statistical Society B 13 (1951) 238-241.
 */
final class Simpson {

    /** Differences of logarithms that are smaller than a factor of 1.2 are no direction. */
    private static final double DIRECTION = Math.log(1.2);

    private Simpson() {}

    /**
     * Ratio within the groups, when it points the other way than the ratio over all.
     *
     * @param values of the cells
     * @param second whether a cell is at the second level
     * @param groups group of every cell, in [0, ∞)
     * @return mean difference within groups, second less first, weighted by n1 n2 / (n1 + n2); empty when both agree
     */
    static Optional<Double> turned(double[] values, boolean[] second, int[] groups) {
        int count = Arrays.stream(groups).max().orElse(-1) + 1;
        double[][] sums = new double[count + 1][2];
        int[][] sizes = new int[count + 1][2];
        for (int i = 0; i < values.length; i++) {
            int side = second[i] ? 1 : 0;
            sums[groups[i]][side] += values[i];
            sizes[groups[i]][side]++;
            sums[count][side] += values[i];
            sizes[count][side]++;
        }
        double within = 0;
        double weights = 0;
        for (int group = 0; group < count; group++) {
            double weight = weight(sizes[group]);
            within += weight == 0 ? 0 : weight * difference(sums[group], sizes[group]);
            weights += weight;
        }
        if (weights == 0 || weight(sizes[count]) == 0) {
            return Optional.empty();
        }
        double inside = within / weights;
        double over = difference(sums[count], sizes[count]);
        boolean turned = over * inside < 0 && Math.min(Math.abs(over), Math.abs(inside)) >= DIRECTION;
        return turned ? Optional.of(inside) : Optional.empty();
    }

    private static double weight(int[] sizes) {
        return sizes[0] == 0 || sizes[1] == 0 ? 0 : (double) sizes[0] * sizes[1] / (sizes[0] + sizes[1]);
    }

    private static double difference(double[] sums, int[] sizes) {
        return sums[1] / sizes[1] - sums[0] / sizes[0];
    }
}
