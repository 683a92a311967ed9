package org.berrywatt.uncertainty;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RectangularCholeskyDecomposition;
import org.hipparchus.stat.correlation.PearsonsCorrelation;

/**
 * How the inputs of a model go together: correlation coefficients for every pair, in the order of the inputs (JCGM 100:2008,
 * 5.2 and annex H.2).
 */
public final class Correlation {
    /** Coefficients from rounded figures may leave a matrix that no set of quantities has, by this much. */
    private static final double ROUNDING = 1e-10;

    private final double[][] coefficients;

    private Correlation(double[][] coefficients) {
        this.coefficients = coefficients;
    }

    /**
     * Correlation coefficients as given.
     *
     * @param coefficients a symmetric matrix of numbers in [-1, 1] with ones on the diagonal
     * @throws IllegalArgumentException when it is not such a matrix, or no set of quantities can be correlated so
     */
    public static Correlation of(double[][] coefficients) {
        double[][] copy = Arrays.stream(coefficients).map(double[]::clone).toArray(double[][]::new);
        CorrelationDoor.check(copy);
        return new Correlation(copy);
    }

    /**
     * Correlation of the means of quantities that were read together (JCGM 100:2008, 5.2.3).
     *
     * @param readings for each quantity its readings, equally many, at least two, not all equal
     * @throws IllegalArgumentException when there are too few readings or one quantity's do not differ
     */
    public static Correlation ofReadings(double[]... readings) {
        double[][] columns = MatrixUtils.createRealMatrix(readings).transpose().getData();
        return of(new PearsonsCorrelation(columns).getCorrelationMatrix().getData());
    }

    /** Inputs of one cause move together, all others apart. */
    static Correlation byCause(List<Input> inputs) {
        double[][] coefficients = new double[inputs.size()][inputs.size()];
        for (int i = 0; i < coefficients.length; i++) {
            for (int j = 0; j < i; j++) {
                coefficients[i][j] = isShared(inputs.get(i), inputs.get(j)) ? 1 : 0;
                coefficients[j][i] = coefficients[i][j];
            }
            coefficients[i][i] = 1;
        }
        return new Correlation(coefficients);
    }

    private static boolean isShared(Input one, Input other) {
        return one.cause() != null && one.cause().equals(other.cause());
    }

    /** The variance that parts add up to: Σᵢⱼ rᵢⱼ partᵢ partⱼ (JCGM 100:2008, 5.2.2). */
    double variance(double[] parts) {
        return covariance(parts, parts);
    }

    double covariance(double[] parts, double[] others) {
        return IntStream.range(0, parts.length)
                .mapToDouble(i -> parts[i] * with(i, others))
                .sum();
    }

    /** What input i meets of all parts: Σⱼ rᵢⱼ partⱼ. */
    double with(int i, double[] parts) {
        return IntStream.range(0, parts.length)
                .mapToDouble(j -> coefficients[i][j] * parts[j])
                .sum();
    }

    /**
     * Two results of the same inputs, such as resistance and reactance from one set of readings: their correlation coefficient
     * (JCGM 100:2008, H.2.3).
     *
     * @return in [-1, 1]; NaN when a result has no uncertainty
     */
    public double between(Budget one, Budget other) {
        return covariance(one.signedParts(), other.signedParts())
                / (one.standardUncertainty() * other.standardUncertainty());
    }

    /** Independent normal draws made to go together (JCGM 101:2008, 6.4.8). */
    double[][] correlate(double[][] independent) {
        var root = new RectangularCholeskyDecomposition(MatrixUtils.createRealMatrix(coefficients), ROUNDING)
                .getRootMatrix();
        return root.multiply(MatrixUtils.createRealMatrix(Arrays.copyOf(independent, root.getColumnDimension())))
                .getData();
    }
}
