package org.berrywatt.benchmark;

import java.util.function.DoubleFunction;
import org.berrywatt.curve.Diode;
import org.berrywatt.curve.ThermalVoltage;
import org.hipparchus.analysis.solvers.UnivariateSolver;

/** The diode by a bracketing root finder, its brackets as narrow as can be known beforehand. */
final class Bracketed {
    private static final int ENOUGH_EVALUATIONS = 500;

    private Bracketed() {}

    /** Current between short and open circuit. */
    static double currentA(DoubleFunction<UnivariateSolver> solver, Diode diode, double voltageV) {
        var scaleA = diode.photocurrentA();
        return solver.apply(scaleA)
                .solve(
                        ENOUGH_EVALUATIONS,
                        currentA -> excessA(diode, voltageV, currentA),
                        -1e-3 * scaleA,
                        1.001 * scaleA);
    }

    /** Voltage at a current between open and short circuit: the diode alone, without a shunt, bounds it from above. */
    static double voltageV(DoubleFunction<UnivariateSolver> solver, Diode diode, double currentA) {
        var openV = scaleV(diode) * Math.log1p(diode.photocurrentA() / diode.saturationCurrentA());
        return solver.apply(openV)
                .solve(
                        ENOUGH_EVALUATIONS,
                        voltageV -> excessA(diode, voltageV, currentA),
                        -1e-3 * openV,
                        1.001 * openV);
    }

    private static double excessA(Diode diode, double voltageV, double currentA) {
        var junctionV = voltageV + currentA * diode.seriesResistanceOhm();
        return diode.photocurrentA()
                - diode.saturationCurrentA() * Math.expm1(junctionV / scaleV(diode))
                - junctionV / diode.shuntResistanceOhm()
                - currentA;
    }

    private static double scaleV(Diode diode) {
        return diode.idealityFactor() * ThermalVoltage.atCelsius(diode.temperatureC());
    }
}
