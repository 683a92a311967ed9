package org.berrywatt.benchmark;

import static java.util.concurrent.TimeUnit.MICROSECONDS;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleBiFunction;
import org.berrywatt.curve.Diode;
import org.berrywatt.curve.ThermalVoltage;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.analysis.solvers.UnivariateSolver;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** All currents of the published curves: our solver against the bracketing root finder of the numerical library. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(MICROSECONDS)
public class DiodeSolve {
    private static final double ACCURACY = 1e-13;
    private static final int ENOUGH_EVALUATIONS = 500;
    private static final int ORDER = 5;

    /** Brent's rule, what the library takes when asked for a root without further words. */
    static final DoubleFunction<UnivariateSolver> GENERIC = absolute -> new BrentSolver(ACCURACY, absolute, absolute);

    /** The library's quickest for smooth functions. */
    static final DoubleFunction<UnivariateSolver> HIGH_ORDER =
            absolute -> new BracketingNthOrderBrentSolver(ACCURACY, absolute, absolute, ORDER);

    private final List<PublishedCurve> curves = PublishedCurve.all();

    @Benchmark
    public double diode() {
        return sumOfCurrents(Diode::currentA);
    }

    @Benchmark
    public double bracketing() {
        return sumOfCurrents((diode, voltageV) -> bracketedA(GENERIC, diode, voltageV));
    }

    @Benchmark
    public double bracketingOfHighOrder() {
        return sumOfCurrents((diode, voltageV) -> bracketedA(HIGH_ORDER, diode, voltageV));
    }

    private double sumOfCurrents(ToDoubleBiFunction<Diode, Double> current) {
        var sum = 0.0;
        for (var curve : curves) {
            for (var voltageV : curve.voltagesV()) {
                sum += current.applyAsDouble(curve.diode(), voltageV);
            }
        }
        return sum;
    }

    /** The current between short and open circuit, bracketed as narrowly as can be known beforehand. */
    static double bracketedA(DoubleFunction<UnivariateSolver> solver, Diode diode, double voltageV) {
        var scaleA = diode.photocurrentA();
        return solver.apply(ACCURACY * scaleA)
                .solve(
                        ENOUGH_EVALUATIONS,
                        currentA -> excessA(diode, voltageV, currentA),
                        -1e-3 * scaleA,
                        1.001 * scaleA);
    }

    private static double excessA(Diode diode, double voltageV, double currentA) {
        var junctionV = voltageV + currentA * diode.seriesResistanceOhm();
        var scaleV = diode.idealityFactor() * ThermalVoltage.atCelsius(diode.temperatureC());
        return diode.photocurrentA()
                - diode.saturationCurrentA() * Math.expm1(junctionV / scaleV)
                - junctionV / diode.shuntResistanceOhm()
                - currentA;
    }
}
