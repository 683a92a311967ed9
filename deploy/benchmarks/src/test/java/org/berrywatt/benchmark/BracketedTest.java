package org.berrywatt.benchmark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;

class BracketedTest {

    /** A race counts only when both runners reach the same goal. */
    @Test
    void findsTheSamePointsAsOurSolver() {
        for (var curve : PublishedCurve.all()) {
            for (int i = 0; i < curve.voltagesV().length; i++) {
                var diode = curve.diode();
                var voltageV = curve.voltagesV()[i];
                var currentA = curve.currentsA()[i];
                assertThat(Bracketed.currentA(scale -> new BrentSolver(1e-13, 1e-13 * scale), diode, voltageV))
                        .isCloseTo(currentA, within(1e-12 * diode.photocurrentA()));
                assertThat(Bracketed.voltageV(scale -> new BrentSolver(1e-13, 1e-13 * scale), diode, currentA))
                        .isCloseTo(voltageV, within(1e-10 * diode.openCircuitVoltageV()));
            }
        }
    }
}
