package org.berrywatt.benchmark;

import static java.util.concurrent.TimeUnit.MICROSECONDS;

import java.util.List;
import org.berrywatt.curve.Diode;
import org.hipparchus.analysis.solvers.BisectionSolver;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.analysis.solvers.UnivariateSolver;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * All points of the published curves: our solver against bracketing root finders of the numerical library, the plain one and
 * Brent's rule, which the library takes when asked for a root without further words.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(MICROSECONDS)
public class DiodeSolve {
    private static final double ACCURACY = 1e-13;

    private final List<PublishedCurve> curves = PublishedCurve.all();

    @Benchmark
    public double current() {
        return sum(PublishedCurve::voltagesV, Diode::currentA);
    }

    @Benchmark
    public double currentByBisection() {
        return sum(
                PublishedCurve::voltagesV,
                (diode, voltageV) -> Bracketed.currentA(DiodeSolve::bisection, diode, voltageV));
    }

    @Benchmark
    public double currentByBrent() {
        return sum(
                PublishedCurve::voltagesV, (diode, voltageV) -> Bracketed.currentA(DiodeSolve::brent, diode, voltageV));
    }

    @Benchmark
    public double voltage() {
        return sum(PublishedCurve::currentsA, Diode::voltageV);
    }

    @Benchmark
    public double voltageByBisection() {
        return sum(
                PublishedCurve::currentsA,
                (diode, currentA) -> Bracketed.voltageV(DiodeSolve::bisection, diode, currentA));
    }

    @Benchmark
    public double voltageByBrent() {
        return sum(
                PublishedCurve::currentsA, (diode, currentA) -> Bracketed.voltageV(DiodeSolve::brent, diode, currentA));
    }

    private static UnivariateSolver bisection(double scale) {
        return new BisectionSolver(ACCURACY * scale);
    }

    private static UnivariateSolver brent(double scale) {
        return new BrentSolver(ACCURACY, ACCURACY * scale);
    }

    private double sum(Points points, Answer answer) {
        var sum = 0.0;
        for (var curve : curves) {
            for (double point : points.of(curve)) {
                sum += answer.of(curve.diode(), point);
            }
        }
        return sum;
    }

    private interface Points {
        double[] of(PublishedCurve curve);
    }

    private interface Answer {
        double of(Diode diode, double point);
    }
}
