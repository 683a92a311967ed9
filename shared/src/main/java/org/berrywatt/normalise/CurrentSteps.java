package org.berrywatt.normalise;

import java.util.stream.Stream;

/** From the current that was read to the current per area at the reference light. */
final class CurrentSteps {
    private CurrentSteps() {}

    static Stream<Step> of(CellMeasurement cell, Reference reference, Model model) {
        return Stream.of(photocurrent(cell, model), density(cell, reference, model));
    }

    private static Step photocurrent(CellMeasurement cell, Model model) {
        var loading = cell.underLight() instanceof SpotReading spot ? Loading.ofCurrent(spot) : Loading.NONE;
        var dark = cell.darkCurrentA() == null ? 0 : cell.darkCurrentA().value();
        var readings = currentA(cell.underLight()) + " − " + Show.amperes(dark);
        var result = Show.amperes(model.value(model.photocurrentA()));
        return loading.share() > 0
                ? new Step(
                        "step.photocurrent",
                        "Iph = b · Isc − Idark",
                        Show.number(loading.middleFactor()) + " · " + readings,
                        result)
                : new Step("step.photocurrent", "Iph = Isc − Idark", readings, result);
    }

    private static String currentA(UnderLight underLight) {
        return Show.amperes(
                underLight instanceof SpotReading spot
                        ? spot.currentA().likeliest()
                        : ((LoadSweep) underLight)
                                .figures()
                                .shortCircuitCurrentA()
                                .value());
    }

    private static Step density(CellMeasurement cell, Reference reference, Model model) {
        var factor = model.value(model.currentFactor());
        var proportional = Show.amperes(model.value(model.photocurrentA())) + " / "
                + Show.area(cell.areaM2().value()) + " · " + Show.irradiance(reference.irradianceWm2()) + " / "
                + Show.irradiance(model.value(model.effectiveWm2()));
        var result = Show.currentDensity(model.value(model.figure(Measurand.CURRENT_DENSITY)));
        return factor == 1
                ? new Step("step.currentDensity", "J = Iph / A · Gref / Geff", proportional, result)
                : new Step(
                        "step.currentDensity",
                        "J = Iph / A · Gref / Geff · k",
                        proportional + " · " + Show.number(factor),
                        result);
    }
}
