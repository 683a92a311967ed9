package org.berrywatt.statistics;

import java.util.Arrays;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/** The restricted likelihood criterion at one ratio of group to residual variance. */
final class InterceptCriterion {

    private final InterceptSums sums;
    private final double ratio;
    private final RealMatrix inverse;
    private final double logDeterminant;
    private final double[] coefficients;
    private final double leftSquares;

    InterceptCriterion(InterceptSums sums, double ratio) {
        this.sums = sums;
        this.ratio = ratio;
        int width = sums.width();
        RealMatrix weighed = sums.weighed(size -> ratio / (1 + ratio * size));
        LUDecomposition square = new LUDecomposition(weighed.getSubMatrix(0, width - 1, 0, width - 1), 0);
        this.inverse = square.getSolver().getInverse();
        this.logDeterminant = Math.log(square.getDeterminant());
        double[] right = Arrays.copyOf(weighed.getColumn(width), width);
        this.coefficients = inverse.operate(right);
        double explained = 0;
        for (int i = 0; i < width; i++) {
            explained += coefficients[i] * right[i];
        }
        this.leftSquares = weighed.getEntry(width, width) - explained;
    }

    double ratio() {
        return ratio;
    }

    RealMatrix inverse() {
        return inverse;
    }

    double[] coefficients() {
        return coefficients.clone();
    }

    double leftSquares() {
        return leftSquares;
    }

    double variance() {
        return leftSquares / degrees();
    }

    private int degrees() {
        return sums.rows() - sums.width();
    }

    double value() {
        double groups = sums.groupsOfSize().entrySet().stream()
                .mapToDouble(size -> size.getValue() * Math.log1p(ratio * size.getKey()))
                .sum();
        return groups
                + logDeterminant
                + sums.columns().logScale()
                + degrees() * (1 + Math.log(2 * Math.PI * variance()));
    }

    /** By the ratio. */
    double derivative() {
        double groups = sums.groupsOfSize().entrySet().stream()
                .mapToDouble(size -> size.getValue() * (double) size.getKey() / (1 + ratio * size.getKey()))
                .sum();
        RealMatrix change = sums.weighedGroups(size -> -1 / ((1 + ratio * size) * (1 + ratio * size)));
        int width = sums.width();
        double trace = inverse.multiply(change.getSubMatrix(0, width - 1, 0, width - 1))
                .getTrace();
        return groups + trace + degrees() * bySquares(change) / leftSquares;
    }

    private double bySquares(RealMatrix change) {
        double[] vector = new double[coefficients.length + 1];
        Arrays.setAll(vector, i -> i < coefficients.length ? -coefficients[i] : 1);
        double[] changed = change.operate(vector);
        double sum = 0;
        for (int i = 0; i < vector.length; i++) {
            sum += vector[i] * changed[i];
        }
        return sum;
    }
}
