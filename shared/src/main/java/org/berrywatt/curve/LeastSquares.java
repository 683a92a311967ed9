package org.berrywatt.curve;

import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;

/**
 * Where a sum of squared residuals is least, by the rule of Levenberg and Marquardt.
 *
 * @param residuals at the point
 * @param jacobian derivatives of the residuals there
 */
record LeastSquares(RealVector point, RealVector residuals, RealMatrix jacobian) {
    private static final int ENOUGH_STEPS = 500;
    private static final double STEP_BOUND = 100;
    private static final double TOLERANCE = 1e-13;
    private static final LevenbergMarquardtOptimizer OPTIMIZER =
            new LevenbergMarquardtOptimizer(STEP_BOUND, TOLERANCE, TOLERANCE, TOLERANCE, Double.MIN_NORMAL);

    /** Goes down from a start; a valley that never ends is left after some steps. */
    static LeastSquares from(RealVector start, int points, MultivariateJacobianFunction residuals) {
        return from(start, points, residuals, ENOUGH_STEPS);
    }

    static LeastSquares from(RealVector start, int points, MultivariateJacobianFunction residuals, int steps) {
        var problem = new LeastSquaresBuilder()
                .start(start)
                .target(new ArrayRealVector(points))
                .model(residuals)
                .checker((step, previous, current) -> step >= steps)
                .maxEvaluations(Integer.MAX_VALUE)
                .maxIterations(Integer.MAX_VALUE)
                .build();
        var best = OPTIMIZER.optimize(problem);
        return new LeastSquares(best.getPoint(), best.getResiduals(), best.getJacobian());
    }

    double sumOfSquares() {
        return residuals.dotProduct(residuals);
    }

    /** Points to spare, in (-∞, ∞). */
    int degreesOfFreedom() {
        return residuals.getDimension() - point.getDimension();
    }

    /** (JᵀJ)⁻¹ of residuals whose variance is 1, had from R of J = QR so that no digits are squared away. */
    RealMatrix covariance() {
        var parameters = point.getDimension();
        var r = new QRDecomposition(jacobian).getR().getSubMatrix(0, parameters - 1, 0, parameters - 1);
        var inverse = new QRDecomposition(r).getSolver().getInverse();
        return inverse.multiplyTransposed(inverse);
    }
}
