package org.berrywatt.statistics;

import java.util.Arrays;
import org.berrywatt.statistics.Answer.Given;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Least squares by Householder's QR decomposition: y = X b + e.
 *
 * <p>Columns are scaled to length one before and the solution is refined once with its own residuals, so that columns of very
 * different size keep their digits. Source: G. H. Golub and C. F. Van Loan, Matrix Computations, chapter 5; influence by R. D.
 * Cook, Technometrics 19 (1977) 15-18.
 */
public final class LinearModel {

    private static final double DEPENDENT = 1e-12;

    private final RealMatrix scaled;
    private final double[] scale;
    private final RealMatrix inverseR;
    private final RealVector solution;
    private final RealVector residuals;
    private final int residualDegrees;

    private LinearModel(RealMatrix scaled, double[] scale, QRDecomposition qr, RealVector y, int residualDegrees) {
        this.scaled = scaled;
        this.scale = scale;
        this.residualDegrees = residualDegrees;
        int columns = scaled.getColumnDimension();
        RealMatrix r = qr.getR().getSubMatrix(0, columns - 1, 0, columns - 1);
        this.inverseR = new QRDecomposition(r).getSolver().getInverse();
        RealVector first = qr.getSolver().solve(y);
        RealVector left = y.subtract(scaled.operate(first));
        this.solution = first.add(qr.getSolver().solve(left));
        this.residuals = y.subtract(scaled.operate(solution));
    }

    /**
     * Fits rows.
     *
     * @param x rows of explaining values, a column of ones included where an intercept is wanted
     * @param y one value for each row
     * @param lost degrees of freedom already spent, for example on block means taken out before; in [0, ∞)
     * @return no answer for numbers that are not finite, fewer rows than needed to leave a degree of freedom, or columns that
     *     depend on each other
     */
    public static Answer<LinearModel> fit(double[][] x, double[] y, int lost) {
        if (!Ranks.allFinite(y) || !Arrays.stream(x).allMatch(Ranks::allFinite)) {
            return new Withheld<>(Reason.NOT_FINITE);
        }
        int columns = x.length == 0 ? 0 : x[0].length;
        int residualDegrees = y.length - columns - lost;
        if (columns == 0 || residualDegrees < 1) {
            return new Withheld<>(Reason.TOO_FEW);
        }
        return decomposed(x, y, residualDegrees);
    }

    private static Answer<LinearModel> decomposed(double[][] x, double[] y, int residualDegrees) {
        RealMatrix matrix = new Array2DRowRealMatrix(x);
        double[] scale = new double[matrix.getColumnDimension()];
        for (int column = 0; column < scale.length; column++) {
            scale[column] = matrix.getColumnVector(column).getNorm();
            if (scale[column] == 0) {
                return new Withheld<>(Reason.DEPENDENT_COLUMNS);
            }
            matrix.setColumnVector(column, matrix.getColumnVector(column).mapDivide(scale[column]));
        }
        QRDecomposition qr = new QRDecomposition(matrix, DEPENDENT);
        return qr.getSolver().isNonSingular()
                ? new Given<>(new LinearModel(matrix, scale, qr, new ArrayRealVector(y), residualDegrees))
                : new Withheld<>(Reason.DEPENDENT_COLUMNS);
    }

    public double[] coefficients() {
        double[] coefficients = solution.toArray();
        Arrays.setAll(coefficients, column -> coefficients[column] / scale[column]);
        return coefficients;
    }

    /** Of every coefficient. */
    public double[] standardErrors() {
        double[] errors = new double[scale.length];
        Arrays.setAll(errors, column -> {
            double[] one = new double[scale.length];
            one[column] = 1;
            return standardError(one);
        });
        return errors;
    }

    /** Of a weighted sum of coefficients. */
    public double standardError(double... weights) {
        return residualDeviation() * unitError(weights);
    }

    /** The same for a residual standard deviation of one: what the design alone decides. */
    public double unitError(double... weights) {
        double[] unscaled = weights.clone();
        Arrays.setAll(unscaled, column -> unscaled[column] / scale[column]);
        return inverseR.transpose().operate(new ArrayRealVector(unscaled)).getNorm();
    }

    public double residualSquares() {
        return residuals.dotProduct(residuals);
    }

    public double residualDeviation() {
        return Math.sqrt(residualSquares() / residualDegrees);
    }

    public int residualDegrees() {
        return residualDegrees;
    }

    /** Weight of each row's own value in its fitted value, in [0, 1]. */
    public double[] leverages() {
        RealMatrix q = scaled.multiply(inverseR);
        double[] leverages = new double[q.getRowDimension()];
        Arrays.setAll(leverages, row -> q.getRowVector(row).dotProduct(q.getRowVector(row)));
        return leverages;
    }

    /** Cook's distance of each row; NaN for a row that alone decides a coefficient. */
    public double[] cooksDistances() {
        double[] leverages = leverages();
        double variance = residualSquares() / residualDegrees;
        double[] distances = new double[leverages.length];
        Arrays.setAll(distances, row -> {
            double free = 1 - leverages[row];
            double residual = residuals.getEntry(row);
            return free < 1e-12
                    ? Double.NaN
                    : residual * residual * leverages[row] / (free * free * scale.length * variance);
        });
        return distances;
    }
}
