package org.berrywatt.statistics;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/** Rows of a logistic model with their successes: likelihood, information and penalised score at given coefficients. */
final class LogisticRows {

    private final double[][] x;
    private final int[] successes;
    private final int[] totals;

    /** @param x explaining columns by row, all rows as long as another */
    LogisticRows(double[][] x, int[] successes, int[] totals) {
        this.x = x;
        this.successes = successes.clone();
        this.totals = totals.clone();
    }

    double logLikelihood(double[] at) {
        double sum = 0;
        for (int row = 0; row < x.length; row++) {
            double eta = eta(at, row);
            sum += successes[row] * eta - totals[row] * softplus(eta);
        }
        return sum;
    }

    /** Fisher's information. */
    RealMatrix information(double[] at) {
        double[][] sum = new double[at.length][at.length];
        for (int row = 0; row < x.length; row++) {
            double weight = weight(at, row);
            for (int i = 0; i < at.length; i++) {
                for (int j = 0; j < at.length; j++) {
                    sum[i][j] += weight * x[row][i] * x[row][j];
                }
            }
        }
        return new Array2DRowRealMatrix(sum, false);
    }

    /** Derivatives of the likelihood with Firth's penalty. */
    double[] score(double[] at, RealMatrix inverse) {
        double[] score = new double[at.length];
        for (int row = 0; row < x.length; row++) {
            double[] values = x[row];
            double chance = chance(at, row);
            double leverage = weight(at, row) * dot(values, inverse.operate(values));
            double pull = successes[row] - totals[row] * chance + leverage * (0.5 - chance);
            Arrays.setAll(score, column -> score[column] + pull * values[column]);
        }
        return score;
    }

    static RealMatrix inverse(RealMatrix matrix) {
        return new LUDecomposition(matrix, 0).getSolver().getInverse();
    }

    private double weight(double[] at, int row) {
        double chance = chance(at, row);
        return totals[row] * chance * (1 - chance);
    }

    private double chance(double[] at, int row) {
        return 1 / (1 + Math.exp(-eta(at, row)));
    }

    private double eta(double[] at, int row) {
        return dot(at, x[row]);
    }

    private static double softplus(double eta) {
        return eta > 0 ? eta + Math.log1p(Math.exp(-eta)) : Math.log1p(Math.exp(eta));
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
