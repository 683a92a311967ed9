package org.berrywatt.uncertainty;

import java.util.Arrays;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;

/** What a correlation matrix must satisfy. */
final class CorrelationDoor {
    private static final double ROUNDING = 1e-9;

    private CorrelationDoor() {}

    static void check(double[][] coefficients) {
        for (int i = 0; i < coefficients.length; i++) {
            if (coefficients[i].length != coefficients.length) {
                throw new IllegalArgumentException("a correlation matrix must be square");
            }
            for (int j = 0; j <= i; j++) {
                pair(coefficients[i][j], coefficients[j][i], i == j);
            }
        }
        together(coefficients);
    }

    private static void pair(double above, double below, boolean same) {
        if (!(above >= -1 - ROUNDING && above <= 1 + ROUNDING)) {
            throw new IllegalArgumentException("a correlation coefficient lies in [-1, 1], not " + above);
        }
        if (!(Math.abs(above - below) <= ROUNDING) || (same && Math.abs(above - 1) > ROUNDING)) {
            throw new IllegalArgumentException(
                    "a correlation matrix is symmetric with ones on the diagonal, not " + above + " and " + below);
        }
    }

    /** No combination of the quantities may have a negative variance. */
    private static void together(double[][] coefficients) {
        double least = Arrays.stream(
                        new EigenDecompositionSymmetric(MatrixUtils.createRealMatrix(coefficients)).getEigenvalues())
                .min()
                .orElse(0);
        if (!(least >= -ROUNDING)) {
            throw new IllegalArgumentException(
                    "no quantities can be correlated so: the least eigenvalue must lie in [0, infinity), not " + least);
        }
    }
}
