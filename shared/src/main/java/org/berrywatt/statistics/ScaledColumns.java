package org.berrywatt.statistics;

import java.util.Arrays;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/** The columns [1, columns, y] with all but the first moved to mean 0 and all but the last scaled to deviation 1. */
final class ScaledColumns {

    private final double[][] columns;
    private final double[] means;
    private final double[] scales;

    ScaledColumns(double[][] columns, double[] y) {
        int width = columns.length + 2;
        this.columns = new double[width][];
        this.means = new double[width];
        this.scales = new double[width];
        Arrays.fill(scales, 1);
        for (int i = 1; i < width; i++) {
            this.columns[i] = i == width - 1 ? y : columns[i - 1];
            means[i] = mean(this.columns[i]);
            scales[i] = i == width - 1 ? 1 : deviation(this.columns[i], means[i]);
        }
    }

    private static double mean(double[] values) {
        double first = Arrays.stream(values).average().orElseThrow();
        return first + Arrays.stream(values).map(v -> v - first).sum() / values.length;
    }

    private static double deviation(double[] values, double mean) {
        double square = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / values.length;
        return square == 0 ? 1 : Math.sqrt(square);
    }

    /** With the first and the last. */
    int width() {
        return means.length;
    }

    /** Fills in a row. */
    void read(int index, double[] row) {
        row[0] = 1;
        for (int column = 1; column < row.length; column++) {
            row[column] = (columns[column][index] - means[column]) / scales[column];
        }
    }

    /** The determinant of scaled columns is smaller by this, in logarithms. */
    double logScale() {
        return 2 * Arrays.stream(scales).map(Math::log).sum();
    }

    double[] toOriginal(double[] coefficients) {
        double[] original = back().operate(coefficients);
        original[0] += means[means.length - 1];
        return original;
    }

    /** Turns coefficients of moved and scaled columns into those of the columns as given. */
    RealMatrix back() {
        int width = means.length - 1;
        RealMatrix back = MatrixUtils.createRealIdentityMatrix(width);
        for (int i = 1; i < width; i++) {
            back.setEntry(i, i, 1 / scales[i]);
            back.setEntry(0, i, -means[i] / scales[i]);
        }
        return back;
    }
}
