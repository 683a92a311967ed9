package org.berrywatt.normalise;

import java.util.stream.Stream;

/** From the voltage that was read to the voltage at reference light and temperature. */
final class VoltageSteps {
    private VoltageSteps() {}

    static Stream<Step> of(CellMeasurement cell, Model model) {
        return Stream.of(loaded(cell.underLight(), model), Stream.of(scaled(cell, model)), temperature(cell, model))
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

    private static Step scaled(CellMeasurement cell, Model model) {
        var readV = model.value(model.clips().voltageV());
        var ratio = model.value(model.ratio());
        var result = Show.volts(model.value(model.scaling().voltageV()));
        return model.fitted()
                ? new Step(
                        "step.voltageFitted",
                        "Vref = Voc · Vdiode(Gref) / Vdiode(Geff)",
                        Show.volts(readV) + " · "
                                + Show.number(model.value(model.scaling().voltageV()) / readV),
                        result)
                : between(new VoltageBounds(ShuntShare.of(cell.underLight())), readV, ratio, result);
    }

    private static Step between(VoltageBounds bounds, double readV, double ratio, String result) {
        return new Step(
                "step.voltage",
                "Vref = (Vdiode + Vleaky) / 2 ± |Vleaky − Vdiode| / 2",
                "Voc = " + Show.volts(readV) + ", Gref / Geff = " + Show.number(ratio) + ": ("
                        + Show.volts(bounds.diode(readV, ratio)) + " + " + Show.volts(bounds.leaky(readV, ratio))
                        + ") / 2",
                result);
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
