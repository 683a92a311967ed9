package org.berrywatt.statistics;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;

/**
 * All that a model with one random intercept needs of its rows: sums of products of [1, columns, y], and for every group size
 * the summed products of the groups' own sums.
 */
final class InterceptSums {

    private static final double DEPENDENT = 1e-10;

    private final ScaledColumns columns;
    private final double[][] products;
    private final Map<Integer, double[][]> bySize = new TreeMap<>();
    private final Map<Integer, Integer> groupsOfSize = new TreeMap<>();
    private final int rows;

    private InterceptSums(ScaledColumns columns, int rows) {
        this.columns = columns;
        this.rows = rows;
        this.products = new double[columns.width()][columns.width()];
    }

    static InterceptSums of(double[][] columns, double[] y, int[] groups) {
        InterceptSums sums = new InterceptSums(new ScaledColumns(columns, y), y.length);
        sums.add(groups);
        return sums;
    }

    private void add(int[] groups) {
        int count = Arrays.stream(groups).max().orElseThrow() + 1;
        double[][] sums = new double[count][columns.width()];
        double[] row = new double[columns.width()];
        for (int i = 0; i < rows; i++) {
            columns.read(i, row);
            addProducts(products, row);
            for (int column = 0; column < row.length; column++) {
                sums[groups[i]][column] += row[column];
            }
        }
        for (double[] sum : sums) {
            if (sum[0] > 0) {
                int size = (int) sum[0];
                addProducts(bySize.computeIfAbsent(size, s -> new double[sum.length][sum.length]), sum);
                groupsOfSize.merge(size, 1, Integer::sum);
            }
        }
    }

    private static void addProducts(double[][] products, double[] row) {
        for (int i = 0; i < row.length; i++) {
            if (row[i] != 0) {
                for (int j = 0; j < row.length; j++) {
                    products[i][j] += row[i] * row[j];
                }
            }
        }
    }

    int groupCount() {
        return groupsOfSize.values().stream().mapToInt(Integer::intValue).sum();
    }

    int rows() {
        return rows;
    }

    /** Coefficients, the intercept among them. */
    int width() {
        return columns.width() - 1;
    }

    ScaledColumns columns() {
        return columns;
    }

    double squares() {
        return products[width()][width()];
    }

    Map<Integer, Integer> groupsOfSize() {
        return groupsOfSize;
    }

    boolean areIndependent() {
        return new PivotedRank(products, width(), DEPENDENT).isFull();
    }

    /** The products, less what each group size weighs. */
    RealMatrix weighed(WeightOfSize weight) {
        double[][] sum = Arrays.stream(products).map(double[]::clone).toArray(double[][]::new);
        addWeighed(sum, size -> -weight.of(size));
        return new Array2DRowRealMatrix(sum, false);
    }

    /** Only what the group sizes weigh. */
    RealMatrix weighedGroups(WeightOfSize weight) {
        double[][] sum = new double[columns.width()][columns.width()];
        addWeighed(sum, weight);
        return new Array2DRowRealMatrix(sum, false);
    }

    private void addWeighed(double[][] sum, WeightOfSize weight) {
        bySize.forEach((size, own) -> {
            double w = weight.of(size);
            for (int i = 0; i < sum.length; i++) {
                for (int j = 0; j < sum.length; j++) {
                    sum[i][j] += w * own[i][j];
                }
            }
        });
    }

    /** Weight of groups of a size. */
    @FunctionalInterface
    interface WeightOfSize {
        double of(int size);
    }
}
