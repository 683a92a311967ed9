package org.berrywatt.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Turns levels into numbers: a factor of s levels becomes s - 1 columns. They are Helmert's contrasts, so scaled that the
 * squares of a column sum to s over the levels; a design without any flaw then has an information of N times the unit matrix.
 */
final class Coding {

    private final List<double[][]> contrasts = new ArrayList<>();
    private final List<Integer> offsets = new ArrayList<>();
    private int columns;

    Coding(List<Factor> factors) {
        for (var factor : factors) {
            offsets.add(columns);
            contrasts.add(contrasts(factor.size()));
            columns += factor.size() - 1;
        }
    }

    /** Contrasts of a factor by level and column. */
    static double[][] contrasts(int levels) {
        double[][] contrasts = new double[levels][levels - 1];
        for (int column = 0; column < levels - 1; column++) {
            double scale = Math.sqrt(levels / ((column + 1.0) * (column + 2)));
            for (int level = 0; level <= column; level++) {
                contrasts[level][column] = -scale;
            }
            contrasts[column + 1][column] = (column + 1) * scale;
        }
        return contrasts;
    }

    int columns() {
        return columns;
    }

    int offset(int factor) {
        return offsets.get(factor);
    }

    int width(int factor) {
        return contrasts.get(factor)[0].length;
    }

    double[] row(List<Integer> levels) {
        double[] row = new double[columns];
        for (int factor = 0; factor < levels.size(); factor++) {
            double[] values = contrasts.get(factor)[levels.get(factor)];
            System.arraycopy(values, 0, row, offset(factor), values.length);
        }
        return row;
    }
}
