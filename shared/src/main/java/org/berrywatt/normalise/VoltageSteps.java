package org.berrywatt.normalise;

import java.util.stream.Stream;

/** From the voltage that was read to the voltage at reference light and temperature. */
final class VoltageSteps {
    private VoltageSteps() {}

    static Stream<Step> of(CellMeasurement cell, Model model) {
        return Stream.of(loaded(cell.underLight(), model), scaled(model), temperature(cell, model))
                .flatMap(steps -> steps);
    }

    /** Shown when it changes a digit that is printed. */
    private static Stream<Step> loaded(UnderLight underLight, Model model) {
        return underLight instanceof SpotReading spot && Notes.isNoted(Loading.ofVoltage(spot))
                ? Stream.of(new Step(
                        "step.inputResistance",
                        "Voc = (1 + 1 / (1 − V / (R · Isc))) / 2 · V",
                        Show.number(Loading.ofVoltage(spot).middleFactor()) + " · "
                                + Show.volts(spot.voltageV().value()),
                        Show.volts(model.value(model.clips().voltageV()))))
                : Stream.empty();
    }

    private static Stream<Step> scaled(Model model) {
        var fitted = model.fitted() ? Stream.of(fitted(model)) : Stream.<Step>empty();
        return Stream.concat(
                fitted, Stream.ofNullable(model.scaling().between()).map(laws -> between(laws, model)));
    }

    private static Step fitted(Model model) {
        var readV = model.value(model.clips().voltageV());
        var between = model.scaling().between();
        var carriedV = model.value(between == null ? model.scaling().voltageV() : between.fromV());
        var light = FittedLight.of(model);
        return new Step(
                light.key("step.voltageFitted"),
                light.formula("V", "Voc"),
                Show.volts(readV) + " · " + Show.number(carriedV / readV),
                Show.volts(carriedV));
    }

    private static Step between(VoltageBetween laws, Model model) {
        var fromV = model.value(laws.fromV());
        var ratio = model.value(laws.ratio().term());
        return new Step(
                "step.voltage",
                "Vref = (Vdiode + Vleaky) / 2 ± |Vleaky − Vdiode| / 2",
                (model.fitted() ? "Vfit" : "Voc") + " = " + Show.volts(fromV) + ", Gref / "
                        + (model.fitted() ? "Gfit" : "Geff") + " = " + Show.number(ratio) + ": ("
                        + Show.volts(laws.bounds().diode(fromV, ratio)) + " + "
                        + Show.volts(laws.bounds().leaky(fromV, ratio))
                        + ") / 2",
                Show.volts(model.value(model.scaling().voltageV())));
    }

    private static Stream<Step> temperature(CellMeasurement cell, Model model) {
        var temperature = cell.temperature();
        return temperature == null
                ? Stream.empty()
                : Stream.of(new Step(
                        "step.temperature",
                        "V25 = Vref + Voc · β · (25 °C − T)",
                        Show.volts(model.value(model.scaling().voltageV())) + " + "
                                + Show.volts(model.value(model.clips().voltageV())) + " · "
                                + Show.percentPerKelvin(temperature.voltagePerKelvin()) + " · (25 °C − "
                                + Show.number(temperature.celsius().value()) + " °C)",
                        Show.volts(model.value(model.figure(Measurand.VOLTAGE)))));
    }
}
