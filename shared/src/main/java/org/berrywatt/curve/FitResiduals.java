package org.berrywatt.curve;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * Model minus measured current at each point, over the current's uncertainty there, with the derivatives by the
 * {@link FitCoordinates}.
 *
 * @param weights the uncertainty of each
 */
record FitResiduals(List<SweepPoint> points, FitWeights weights, FitCoordinates coordinates, FitCriterion criterion)
        implements MultivariateJacobianFunction {

    @Override
    public Pair<RealVector, RealMatrix> value(RealVector free) {
        var parameters = coordinates.parameters(free);
        var diode = coordinates.diode(parameters);
        var values = new double[points.size()];
        var slopes = new double[points.size()][];
        for (int i = 0; i < values.length; i++) {
            var currentA = criterion.currentA(diode, points.get(i));
            values[i] = (currentA - points.get(i).currentA())
                    / weights.uncertaintiesA().getEntry(i);
            slopes[i] = slopes(
                    diode,
                    parameters,
                    points.get(i),
                    currentA,
                    weights.uncertaintiesA().getEntry(i));
        }
        return new Pair<>(new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes, false));
    }

    LeastSquares from(RealVector start, int steps) {
        return LeastSquares.from(start, points.size(), this, steps);
    }

    private double[] slopes(
            Diode diode, Gradient[] parameters, SweepPoint point, double currentA, double uncertaintyA) {
        var junctionV = criterion.junctionV(diode, point, currentA);
        var throughRsA = criterion == FitCriterion.SOLVED ? currentA : point.currentA();
        var byParameter = byParameter(diode, junctionV, throughRsA);
        var unit = uncertaintyA * criterion.feedback(diode, diode.conductanceS(junctionV));
        return IntStream.range(0, FitCoordinates.COUNT)
                .mapToDouble(j -> chained(byParameter, parameters, j) / unit)
                .toArray();
    }

    private static double chained(double[] byParameter, Gradient[] parameters, int j) {
        var sum = 0.0;
        for (int k = 0; k < byParameter.length; k++) {
            sum += byParameter[k] * parameters[k].getPartialDerivative(j);
        }
        return sum;
    }

    /** Derivatives of the right-hand side of the model at a held junction current, by {@link DiodeParameter}. */
    private static double[] byParameter(Diode diode, double junctionV, double currentA) {
        var x = junctionV / diode.scaleV();
        var exponential = Math.exp(x);
        var shuntOhm = diode.shuntResistanceOhm();
        return new double[] {
            1,
            -Math.expm1(x),
            diode.saturationCurrentA() * exponential * x / diode.idealityFactor(),
            -diode.conductanceS(junctionV) * currentA,
            junctionV / (shuntOhm * shuntOhm)
        };
    }
}
