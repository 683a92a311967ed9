package org.berrywatt.curve;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.util.Pair;

/**
 * What the points leave open: a normal distribution over the {@link FitCoordinates}. Where the points tell nothing, what is known
 * beforehand remains, that a parameter lies anywhere between its bounds.
 *
 * @param centre of the distribution
 * @param covariance over the free numbers
 */
record FitSpread(FitCoordinates coordinates, RealVector centre, RealMatrix covariance) {
    /** Standard deviation of ln(x/(1 - x)) when x may be anywhere between 0 and 1: π/√3. */
    private static final double ANYWHERE = Math.PI / Math.sqrt(3);

    private static final int ENOUGH_STEPS = 50;

    /** Around the best fit, residuals being in units that are a factor of the real scatter. */
    static FitSpread around(LeastSquares best, FitResiduals residuals, double scatter) {
        var count = residuals.points().size() + FitCoordinates.COUNT;
        var known = LeastSquares.from(best.point(), count, free -> withBounds(residuals, scatter, free), ENOUGH_STEPS);
        return new FitSpread(residuals.coordinates(), known.point(), known.covariance());
    }

    Diode drawn(double[] standardNormals) {
        var lower = new CholeskyDecomposition(covariance, 1e-9, 1e-300).getL();
        var free = centre.add(lower.operate(new ArrayRealVector(standardNormals, false)));
        return coordinates.diode(free);
    }

    private static Pair<RealVector, RealMatrix> withBounds(FitResiduals residuals, double scatter, RealVector free) {
        var points = residuals.value(free);
        var bounded = FitCoordinates.COUNT;
        var count = residuals.points().size();
        var values = new ArrayRealVector(count + bounded);
        var slopes = new Array2DRowRealMatrix(count + bounded, FitCoordinates.COUNT);
        values.setSubVector(0, points.getFirst().mapDivide(scatter));
        slopes.setSubMatrix(points.getSecond().scalarMultiply(1 / scatter).getData(), 0, 0);
        for (int j = 0; j < bounded; j++) {
            values.setEntry(count + j, free.getEntry(j) / ANYWHERE);
            slopes.setEntry(count + j, j, 1 / ANYWHERE);
        }
        return new Pair<>(values, slopes);
    }

    /** Covariance of the logarithms of the five parameters. */
    RealMatrix ofLogs() {
        var parameters = coordinates.parameters(centre);
        var byFree = new Array2DRowRealMatrix(FitCoordinates.COUNT, FitCoordinates.COUNT);
        for (int k = 0; k < FitCoordinates.COUNT; k++) {
            byFree.setRow(k, parameters[k].log().getGradient());
        }
        return byFree.multiply(covariance).multiplyTransposed(byFree);
    }
}
