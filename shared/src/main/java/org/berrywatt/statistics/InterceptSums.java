package org.berrywatt.statistics;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * All that a model with one random intercept needs of its rows: sums of products of [1, columns, y], and for every group size
 * the summed products of the groups' own sums. Columns and y are moved to mean 0 and columns scaled to deviation 1 before.
 */
final class InterceptSums {

    private static final double DEPENDENT = 1e-10;

    private final double[] means;
    private final double[] scales;
    private final double[][] products;
    private final Map<Integer, double[][]> bySize = new TreeMap<>();
    private final Map<Integer, Integer> groupsOfSize = new TreeMap<>();
    private final int rows;

    private InterceptSums(double[] means, double[] scales, int rows) {
        this.means = means;
        this.scales = scales;
        this.rows = rows;
        this.products = new double[means.length][means.length];
    }

    static InterceptSums of(double[][] columns, double[] y, int[] groups) {
        int width = columns.length + 2;
        double[][] all = new double[width][];
        all[0] = null;
        System.arraycopy(columns, 0, all, 1, columns.length);
        all[width - 1] = y;
        double[] means = new double[width];
        double[] scales = new double[width];
        Arrays.fill(scales, 1);
        for (int i = 1; i < width; i++) {
            means[i] = mean(all[i]);
            scales[i] = i == width - 1 ? 1 : deviation(all[i], means[i]);
        }
        InterceptSums sums = new InterceptSums(means, scales, y.length);
        sums.add(all, groups);
        return sums;
    }

    private static double mean(double[] values) {
        double first = Arrays.stream(values).average().orElseThrow();
        return first + Arrays.stream(values).map(v -> v - first).sum() / values.length;
    }

    private static double deviation(double[] values, double mean) {
        double square = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / values.length;
        return square == 0 ? 1 : Math.sqrt(square);
    }

    private void add(double[][] all, int[] groups) {
        int count = Arrays.stream(groups).max().orElseThrow() + 1;
        double[][] sums = new double[count][means.length];
        double[] row = new double[means.length];
        for (int i = 0; i < rows; i++) {
            row[0] = 1;
            for (int column = 1; column < row.length; column++) {
                row[column] = (all[column][i] - means[column]) / scales[column];
            }
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
        return means.length - 1;
    }

    double squares() {
        return products[width()][width()];
    }

    Map<Integer, Integer> groupsOfSize() {
        return groupsOfSize;
    }

    /** The determinant of scaled columns is smaller by this, in logarithms. */
    double logScale() {
        return 2 * Arrays.stream(scales).map(Math::log).sum();
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
        double[][] sum = new double[means.length][means.length];
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

    double[] toOriginal(double[] coefficients) {
        double[] original = back().operate(coefficients);
        original[0] += means[width()];
        return original;
    }

    /** Turns coefficients of moved and scaled columns into those of the columns as given. */
    RealMatrix back() {
        RealMatrix back = MatrixUtils.createRealIdentityMatrix(width());
        for (int i = 1; i < width(); i++) {
            back.setEntry(i, i, 1 / scales[i]);
            back.setEntry(0, i, -means[i] / scales[i]);
        }
        return back;
    }
}
