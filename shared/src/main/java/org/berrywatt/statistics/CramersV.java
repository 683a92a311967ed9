package org.berrywatt.statistics;

import java.util.Arrays;

/**
 * How closely two sorts of a table go together: sqrt(chi² / (n (min(rows, columns) - 1))), rows and columns without counts
 * left out; 0 when neither tells anything of the other, 1 when one decides the other. Source: H. Cramér, Mathematical Methods
 * of Statistics (1946), chapter 21.
 */
public final class CramersV {

    private CramersV() {}

    /**
     * The measure, in [0, 1]; 0 when a margin has fewer than two filled places.
     *
     * @param counts rows of equal length, each count in [0, ∞)
     */
    public static double of(int[][] counts) {
        double[] rows = Arrays.stream(counts)
                .mapToDouble(row -> Arrays.stream(row).sum())
                .toArray();
        double[] columns = new double[counts.length == 0 ? 0 : counts[0].length];
        for (int[] row : counts) {
            Arrays.setAll(columns, column -> columns[column] + row[column]);
        }
        double n = Arrays.stream(rows).sum();
        long least = Math.min(filled(rows), filled(columns)) - 1;
        return least < 1 ? 0 : Math.sqrt(Math.min(1, squaredContingency(counts, rows, columns, n) / least));
    }

    private static long filled(double[] margin) {
        return Arrays.stream(margin).filter(count -> count > 0).count();
    }

    /** Chi-squared over n. */
    private static double squaredContingency(int[][] counts, double[] rows, double[] columns, double n) {
        double sum = 0;
        for (int row = 0; row < rows.length; row++) {
            for (int column = 0; column < columns.length; column++) {
                double expected = rows[row] * columns[column] / n;
                double off = counts[row][column] - expected;
                sum += expected == 0 ? 0 : off * off / expected;
            }
        }
        return sum / n;
    }
}
