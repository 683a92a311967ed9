package org.berrywatt.findings;

import java.util.Arrays;
import java.util.Optional;
import org.berrywatt.statistics.LinearModel;

/** Least squares within blocks: every column and the outcome less their block's mean, one degree of freedom lost per block. */
final class Centred {

    private Centred() {}

    static Optional<LinearModel> fit(double[][] x, Entries entries) {
        int[] blocks = entries.blocks();
        int count = Arrays.stream(blocks).max().orElse(-1) + 1;
        double[] y = entries.logs().clone();
        int[] sizes = new int[count];
        for (int block : blocks) {
            sizes[block]++;
        }
        for (int column = 0; column < x[0].length; column++) {
            centre(x, column, blocks, sizes);
        }
        centre(y, blocks, sizes);
        int filled = (int) Arrays.stream(sizes).filter(size -> size > 0).count();
        return LinearModel.fit(x, y, filled).value().filter(model -> model.residualSquares() > 0);
    }

    private static void centre(double[][] x, int column, int[] blocks, int[] sizes) {
        double[] values = Arrays.stream(x).mapToDouble(row -> row[column]).toArray();
        centre(values, blocks, sizes);
        for (int row = 0; row < values.length; row++) {
            x[row][column] = Math.abs(values[row]) < 1e-12 ? 0 : values[row];
        }
    }

    private static void centre(double[] values, int[] blocks, int[] sizes) {
        double[] sums = new double[sizes.length];
        for (int i = 0; i < values.length; i++) {
            sums[blocks[i]] += values[i];
        }
        for (int i = 0; i < values.length; i++) {
            values[i] -= sums[blocks[i]] / sizes[blocks[i]];
        }
    }
}
