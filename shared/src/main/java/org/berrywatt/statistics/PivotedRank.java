package org.berrywatt.statistics;

import java.util.Arrays;

/** Rank of a symmetric matrix of products by pivoted elimination; a pivot small beside its own diagonal counts as none. */
public final class PivotedRank {

    private final int size;
    private final int rank;
    private final boolean[] taken;

    /**
     * Looks at the upper left square of a matrix.
     *
     * @param products symmetric, without negative eigenvalues
     * @param size rows looked at, in [0, products.length]
     * @param tolerance smallest share of its diagonal that a pivot keeps, in (0, 1)
     */
    public PivotedRank(double[][] products, int size, double tolerance) {
        this.size = size;
        this.taken = new boolean[size];
        double[][] left = new double[size][];
        for (int i = 0; i < size; i++) {
            left[i] = Arrays.copyOf(products[i], size);
        }
        int found = 0;
        for (int pivot = 0; pivot < size; pivot++) {
            if (left[pivot][pivot] > tolerance * products[pivot][pivot]) {
                eliminate(left, pivot);
                taken[pivot] = true;
                found++;
            }
        }
        this.rank = found;
    }

    private static void eliminate(double[][] left, int pivot) {
        double[] row = left[pivot].clone();
        for (int i = pivot + 1; i < left.length; i++) {
            double factor = row[i] / row[pivot];
            if (factor != 0) {
                for (int j = pivot + 1; j < left.length; j++) {
                    left[i][j] -= factor * row[j];
                }
            }
        }
    }

    public int rank() {
        return rank;
    }

    public boolean isFull() {
        return rank == size;
    }

    /** Whether a column adds something to those before it. */
    public boolean adds(int column) {
        return taken[column];
    }
}
