package org.berrywatt.normalise;

import java.util.stream.Stream;
import org.berrywatt.uncertainty.Budget;
import org.berrywatt.uncertainty.Estimate;

/** From fill factor, voltage and current to the power, and how far off it may be. */
final class PowerSteps {
    private PowerSteps() {}

    static Stream<Step> of(Reference reference, Model model, Budget power) {
        return Stream.of(density(model, power), atReferenceArea(reference, power), interval(power.estimate()));
    }

    private static Step density(Model model, Budget power) {
        return new Step(
                "step.powerDensity",
                "P/A = FF · Vref · J",
                Show.number(model.value(model.scaling().fillFactor())) + " · "
                        + Show.volts(model.value(model.figure(Measurand.VOLTAGE))) + " · "
                        + Show.currentDensity(model.value(model.figure(Measurand.CURRENT_DENSITY))),
                Show.powerDensity(power.value()));
    }

    private static Step atReferenceArea(Reference reference, Budget power) {
        return new Step(
                "step.powerAtReferenceArea",
                "P = P/A · Aref",
                Show.powerDensity(power.value()) + " · " + Show.area(reference.areaM2()),
                Show.watts(power.value() * reference.areaM2()));
    }

    private static Step interval(Estimate power) {
        var relative = power.relativeUncertainty();
        return new Step(
                "step.interval",
                "U = 1.96 · √Σ(cᵢ uᵢ)²",
                "1.96 · " + Show.percent(relative),
                "± " + Show.percent(Estimate.COVERAGE_95 * relative));
    }
}
