package org.berrywatt.statistics;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * Generalised variance inflation: how many times the others widen what can be said about one term of a model, as a volume.
 *
 * <p>det R(term) det R(others) / det R(all), where R is the correlation of the columns. To compare terms of different size
 * take its 1/(2 df)-th power, which is how many times a confidence interval is wider. Source: J. Fox and G. Monette, Journal of
 * the American Statistical Association 87 (1992) 178-183.
 */
public final class Gvif {

    private static final double DEPENDENT = 1e-10;

    private Gvif() {}

    /**
     * The inflation of a term, in [1, ∞).
     *
     * @param correlations of all columns but the intercept, square, with ones on the diagonal
     * @param term indices of the term's columns
     * @return empty when the columns depend on each other, so that the term cannot be told from the others at all
     */
    public static OptionalDouble of(double[][] correlations, int... term) {
        int[] others = IntStream.range(0, correlations.length)
                .filter(i -> Arrays.stream(term).noneMatch(own -> own == i))
                .toArray();
        if (others.length == 0) {
            return OptionalDouble.of(1);
        }
        RealMatrix all = new Array2DRowRealMatrix(correlations);
        double own = determinant(all.getSubMatrix(term, term));
        double rest = determinant(all.getSubMatrix(others, others));
        double whole = determinant(all);
        return whole > DEPENDENT * own * rest ? OptionalDouble.of(own * rest / whole) : OptionalDouble.empty();
    }

    private static double determinant(RealMatrix matrix) {
        return new LUDecomposition(matrix).getDeterminant();
    }
}
