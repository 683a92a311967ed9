package org.berrywatt.normalise;

import java.util.stream.Stream;
import org.berrywatt.curve.SweepFigures;
import org.berrywatt.curve.ThermalVoltage;

/** The fill factor: measured and carried to the reference light, or what it can be. */
final class FillFactorStep {
    private FillFactorStep() {}

    static Stream<Step> of(UnderLight underLight, Model model) {
        return underLight instanceof LoadSweep sweep
                ? measured(sweep.figures(), model)
                : Stream.of(unknown((SpotReading) underLight, model));
    }

    private static Stream<Step> measured(SweepFigures figures, Model model) {
        var read = new Step(
                "step.fillFactor",
                "FF = Pmax / (Voc · Isc)",
                Show.watts(figures.maximumPowerW().value()) + " / ("
                        + Show.volts(figures.openCircuitVoltageV().value()) + " · "
                        + Show.amperes(figures.shortCircuitCurrentA().value()) + ")",
                Show.number(asRead(model)));
        return model.fitted() ? Stream.of(read, scaled(model)) : Stream.of(read);
    }

    private static Step scaled(Model model) {
        var atReference = model.value(model.scaling().fillFactor());
        var light = FittedLight.of(model);
        return new Step(
                light.key("step.fillFactorFitted"),
                light.formula("FF", "FF"),
                Show.number(asRead(model)) + " · " + Show.number(atReference / asRead(model)),
                Show.number(atReference));
    }

    private static double asRead(Model model) {
        return model.value(model.scaling().fillFactorAsRead());
    }

    private static Step unknown(SpotReading spot, Model model) {
        var voltageV = spot.voltageV().value();
        return new Step(
                "step.fillFactorUnknown",
                "FF = (1/4 + FF0) / 2 ± (FF0 − 1/4) / 2",
                "v = Voc / (kT/q) = "
                        + Show.number(voltageV / ThermalVoltage.atCelsius(CellTemperature.REFERENCE_C)) + ", FF0 = "
                        + Show.number(FillFactorBounds.highest(voltageV)),
                Show.number(model.value(model.scaling().fillFactor())));
    }
}
