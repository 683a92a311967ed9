package org.berrywatt.curve;

import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.berrywatt.validation.Row;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.util.Pair;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A nonlinear fit with certified values, NIST/ITL Statistical Reference Datasets; the files name what was checked.
 *
 * @param name of the data set
 * @param model of x, by its parameters
 */
record CertifiedFit(String name, BiFunction<Double, Gradient[], Gradient> model) {
    private static final JsonNode CERTIFIED = new JsonMapper()
            .readTree(CertifiedFit.class.getResourceAsStream("/nist/certified_values.json"))
            .get("nonlinear_regression");

    /** Six data sets of each of NIST's levels of difficulty. */
    static Stream<CertifiedFit> all() {
        return Stream.of(
                new CertifiedFit(
                        "Misra1a",
                        (x, b) -> b[0].multiply(b[1].multiply(-x).expm1().negate())),
                new CertifiedFit("Chwirut2", (x, b) -> b[0].multiply(-x).exp().divide(b[1].add(b[2].multiply(x)))),
                new CertifiedFit(
                        "DanWood",
                        (x, b) -> b[0].multiply(b[1].multiply(Math.log(x)).exp())),
                new CertifiedFit(
                        "Lanczos3",
                        (x, b) -> decay(x, b[0], b[1]).add(decay(x, b[2], b[3])).add(decay(x, b[4], b[5]))),
                new CertifiedFit(
                        "Rat42",
                        (x, b) -> b[0].divide(
                                b[1].subtract(b[2].multiply(x)).exp().add(1))),
                new CertifiedFit("Eckerle4", CertifiedFit::bell));
    }

    /** How many digits a double allows: a sum of three exponentials loses half of them. */
    double wanted() {
        return name.equals("Lanczos3") ? 6 : 8;
    }

    /** Correct digits of the worst parameter, from both certified starts. */
    double digitsOfEstimates() {
        return starts().mapToDouble(start -> worst(found(start).point().toArray(), certified("estimates")))
                .min()
                .orElseThrow();
    }

    /** Correct digits of the worst standard error: square root of the covariance at the scatter seen. */
    double digitsOfStandardErrors() {
        return starts().mapToDouble(start -> worst(standardErrors(found(start)), certified("standard_errors")))
                .min()
                .orElseThrow();
    }

    private LeastSquares found(RealVector start) {
        return LeastSquares.from(start, data().size(), this::residuals);
    }

    private static double[] standardErrors(LeastSquares fit) {
        var variance = fit.sumOfSquares() / fit.degreesOfFreedom();
        var covariance = fit.covariance();
        return IntStream.range(0, covariance.getRowDimension())
                .mapToDouble(i -> Math.sqrt(variance * covariance.getEntry(i, i)))
                .toArray();
    }

    private Pair<RealVector, RealMatrix> residuals(RealVector point) {
        var b = IntStream.range(0, point.getDimension())
                .mapToObj(i -> Gradient.variable(point.getDimension(), i, point.getEntry(i)))
                .toArray(Gradient[]::new);
        var misses = data().stream()
                .map(row -> model.apply(row[1], b).subtract(row[0]))
                .toList();
        return new Pair<>(
                new ArrayRealVector(
                        misses.stream().mapToDouble(Gradient::getValue).toArray()),
                new Array2DRowRealMatrix(
                        misses.stream().map(Gradient::getGradient).toArray(double[][]::new)));
    }

    private Stream<RealVector> starts() {
        return Stream.of("start1", "start2").map(this::certified).map(ArrayRealVector::new);
    }

    private double[] certified(String values) {
        return StreamSupport.stream(CERTIFIED.get(name).get(values).spliterator(), false)
                .mapToDouble(value -> Double.parseDouble(value.asString()))
                .toArray();
    }

    private List<double[]> data() {
        return MeasuredCurves.rows("/nist/nonlinear_" + name + ".csv").stream()
                .map(row -> new double[] {MeasuredCurves.number(row, "y"), MeasuredCurves.number(row, "x")})
                .toList();
    }

    private static double worst(double[] found, double[] certified) {
        return IntStream.range(0, certified.length)
                .mapToDouble(i -> Row.digits(found[i], certified[i]))
                .min()
                .orElseThrow();
    }

    private static Gradient decay(double x, Gradient size, Gradient rate) {
        return size.multiply(rate.multiply(-x).exp());
    }

    private static Gradient bell(double x, Gradient[] b) {
        var off = b[2].subtract(x).divide(b[1]);
        return b[0].divide(b[1]).multiply(off.multiply(off).multiply(-0.5).exp());
    }

    @Override
    public String toString() {
        return name;
    }
}
