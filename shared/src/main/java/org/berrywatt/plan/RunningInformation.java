package org.berrywatt.plan;

import java.util.HashMap;
import java.util.Map;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;

/** Information within groups, kept while single cells come and go: sums of products less what the groups' means take. */
final class RunningInformation {

    /** Keeps a design that tells nothing yet comparable with its neighbours. */
    private static final double RIDGE = 1e-4;

    private final int columns;
    private final double[][] products;
    private final Map<Integer, double[]> sums = new HashMap<>();
    private final Map<Integer, Integer> counts = new HashMap<>();

    RunningInformation(int columns) {
        this.columns = columns;
        this.products = new double[columns][columns];
    }

    void add(int group, double[] row, int sign) {
        addProducts(row, sign);
        double[] sum = sums.computeIfAbsent(group, key -> new double[columns]);
        for (int column = 0; column < columns; column++) {
            sum[column] += sign * row[column];
        }
        counts.merge(group, sign, Integer::sum);
    }

    double logDeterminant() {
        double[][] rest = new double[columns][];
        for (int i = 0; i < columns; i++) {
            rest[i] = products[i].clone();
            rest[i][i] += RIDGE;
        }
        sums.forEach((group, sum) -> takeOff(rest, sum, counts.getOrDefault(group, 0)));
        return logDeterminant(rest);
    }

    private void addProducts(double[] row, int sign) {
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < columns; j++) {
                products[i][j] += sign * row[i] * row[j];
            }
        }
    }

    private static void takeOff(double[][] rest, double[] sum, int count) {
        if (count == 0) {
            return;
        }
        for (int i = 0; i < sum.length; i++) {
            for (int j = 0; j < sum.length; j++) {
                rest[i][j] -= sum[i] * sum[j] / count;
            }
        }
    }

    private static double logDeterminant(double[][] matrix) {
        var root = new CholeskyDecomposition(MatrixUtils.createRealMatrix(matrix), 1e-9, 0).getL();
        double logarithms = 0;
        for (int i = 0; i < matrix.length; i++) {
            logarithms += 2 * Math.log(root.getEntry(i, i));
        }
        return logarithms;
    }
}
