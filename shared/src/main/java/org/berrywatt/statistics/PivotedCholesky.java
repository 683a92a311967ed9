package org.berrywatt.statistics;

import java.util.Arrays;

/**
 * A symmetric matrix without negative eigenvalues, A[p, p] = L L' for as many pivots p as it has rank, the largest first. For every
 * t in the range of A, t' A⁻ t = |L⁻¹ t[p]|². Source: N. J. Higham, Accuracy and Stability of Numerical Algorithms (2002), section
 * 10.3.
 */
final class PivotedCholesky {

    private final double[][] lower;
    private final int[] pivots;
    private int rank;

    private PivotedCholesky(int size) {
        this.lower = new double[size][];
        this.pivots = new int[size];
    }

    /** @param tolerance smallest share of the largest diagonal that counts, in (0, 1) */
    static PivotedCholesky of(double[][] matrix, double tolerance) {
        PivotedCholesky factor = new PivotedCholesky(matrix.length);
        double[] left = new double[matrix.length];
        Arrays.setAll(left, i -> matrix[i][i]);
        double least = tolerance * Arrays.stream(left).max().orElse(0);
        double[][] columns = new double[matrix.length][];
        int pivot = largest(left);
        while (factor.rank < matrix.length && left[pivot] > least && left[pivot] > 0) {
            factor.take(matrix, columns, left, pivot);
            pivot = largest(left);
        }
        factor.keepRows(columns);
        return factor;
    }

    private static int largest(double[] values) {
        int found = 0;
        for (int i = 1; i < values.length; i++) {
            if (values[i] > values[found]) {
                found = i;
            }
        }
        return found;
    }

    /** One column of L for all rows of the matrix. */
    private void take(double[][] matrix, double[][] columns, double[] left, int pivot) {
        double root = Math.sqrt(left[pivot]);
        double[] column = matrix[pivot].clone();
        for (int earlier = 0; earlier < rank; earlier++) {
            double[] known = columns[earlier];
            double factor = known[pivot];
            if (factor != 0) {
                for (int i = 0; i < column.length; i++) {
                    column[i] -= factor * known[i];
                }
            }
        }
        for (int i = 0; i < column.length; i++) {
            column[i] /= root;
            left[i] -= column[i] * column[i];
        }
        left[pivot] = Double.NEGATIVE_INFINITY;
        columns[rank] = column;
        pivots[rank++] = pivot;
    }

    private void keepRows(double[][] columns) {
        for (int row = 0; row < rank; row++) {
            lower[row] = new double[row + 1];
            for (int column = 0; column <= row; column++) {
                lower[row][column] = columns[column][pivots[row]];
            }
        }
    }

    int rank() {
        return rank;
    }

    /** Row of the matrix that the given place stands for. */
    int pivot(int place) {
        return pivots[place];
    }

    /** x with L x = b. */
    double[] solveLower(double[] b) {
        double[] x = b.clone();
        for (int row = 0; row < x.length; row++) {
            for (int column = 0; column < row; column++) {
                x[row] -= lower[row][column] * x[column];
            }
            x[row] /= lower[row][row];
        }
        return x;
    }
}
