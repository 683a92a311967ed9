package org.berrywatt.benchmark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DiodeSolveTest {

    /** A race counts only when both runners reach the same goal. */
    @Test
    void ourSolverAndTheLibrarysFindTheSameCurrents() {
        for (var curve : PublishedCurve.all()) {
            for (var voltageV : curve.voltagesV()) {
                assertThat(DiodeSolve.bracketedA(DiodeSolve.GENERIC, curve.diode(), voltageV))
                        .isCloseTo(
                                curve.diode().currentA(voltageV),
                                within(1e-12 * curve.diode().photocurrentA()));
            }
        }
    }
}
