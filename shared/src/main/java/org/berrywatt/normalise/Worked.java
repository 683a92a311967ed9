package org.berrywatt.normalise;

import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.uncertainty.Budget;

/** The worked calculation: every step with its formula, the numbers put in, and what comes out. */
final class Worked {
    private Worked() {}

    static List<Step> steps(CellMeasurement cell, Reference reference, Model model, Budget power) {
        return Stream.of(
                        LightStep.of(cell.light().irradiance()),
                        CurrentSteps.of(cell, reference, model),
                        VoltageSteps.of(cell, model),
                        FillFactorStep.of(cell.underLight(), model),
                        PowerSteps.of(reference, model, power))
                .flatMap(steps -> steps)
                .toList();
    }
}
