package org.berrywatt.normalise;

import java.util.List;
import org.berrywatt.curve.ThermalVoltage;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.light.Instrument;
import org.berrywatt.uncertainty.Budget;
import org.berrywatt.uncertainty.Estimate;

/** The worked calculation: every step with its formula, the numbers put in, and what comes out. */
record Worked(CellMeasurement cell, Reference reference, Model model, Budget power) {

    List<Step> steps() {
        return List.of(
                effectiveIrradiance(cell.light().irradiance()),
                photocurrent(),
                currentDensity(),
                voltage(),
                cell.underLight() instanceof LoadSweep sweep ? fillFactor(sweep) : fillFactor(),
                powerDensity(),
                powerAtReferenceArea(),
                interval());
    }

    private static Step effectiveIrradiance(EffectiveIrradiance light) {
        var mismatch = Show.number(light.mismatch().value());
        var result = Show.irradiance(light.effectiveWm2().value());
        return light.instrument() == Instrument.LUX_METER
                ? new Step(
                        "step.effectiveIrradiance",
                        "Geff = E / K · M",
                        Show.number(light.readingLx()) + " lx / " + Show.number(light.sunlightLxPerWm2())
                                + " lx per W/m² · " + mismatch,
                        result)
                : new Step(
                        "step.effectiveIrradiance",
                        "Geff = G · M",
                        Show.irradiance(light.readingWm2().value()) + " · " + mismatch,
                        result);
    }

    private Step photocurrent() {
        var spot = cell.underLight() instanceof SpotReading reading ? Burden.of(reading) : new Burden(0);
        var corrected = spot.share() > 0;
        return new Step(
                "step.photocurrent",
                corrected ? "Iph = b · Isc − Idark" : "Iph = Isc − Idark",
                (corrected ? Show.number((1 + spot.widestFactor()) / 2) + " · " : "") + Show.amperes(currentA()) + " − "
                        + Show.amperes(darkA()),
                Show.amperes(model.value(model.photocurrentA())));
    }

    private Step currentDensity() {
        return new Step(
                "step.currentDensity",
                "J = Iph / A · Gref / Geff",
                Show.amperes(model.value(model.photocurrentA())) + " / "
                        + Show.area(cell.areaM2().value()) + " · " + Show.irradiance(reference.irradianceWm2()) + " / "
                        + Show.irradiance(model.value(model.effectiveWm2())),
                Show.currentDensity(model.value(model.currentDensityAm2())));
    }

    private Step voltage() {
        var bounds = new VoltageBounds(ShuntShare.of(cell.underLight()));
        var ratio = model.value(model.ratio());
        var diode = bounds.diode(voltageV(), ratio);
        var leaky = bounds.leaky(voltageV(), ratio);
        return new Step(
                "step.voltage",
                "Vref = (Vdiode + Vleaky) / 2 ± |Vleaky − Vdiode| / 2",
                "Voc = " + Show.volts(voltageV()) + ", Gref / Geff = " + Show.number(ratio) + ": (" + Show.volts(diode)
                        + " + " + Show.volts(leaky) + ") / 2",
                Show.volts(model.value(model.voltageV())));
    }

    private Step fillFactor(LoadSweep sweep) {
        return new Step(
                "step.fillFactor",
                "FF = Pmax / (Voc · Isc)",
                Show.watts(sweep.figures().maximumPowerW().value()) + " / (" + Show.volts(voltageV()) + " · "
                        + Show.amperes(currentA()) + ")",
                Show.number(model.value(model.fillFactor())));
    }

    private Step fillFactor() {
        var highest = FillFactorTerms.highest(voltageV());
        return new Step(
                "step.fillFactorUnknown",
                "FF = (1/4 + FF0) / 2 ± (FF0 − 1/4) / 2",
                "v = Voc / (kT/q) = "
                        + Show.number(voltageV() / ThermalVoltage.atCelsius(VoltageBounds.CELL_TEMPERATURE_C))
                        + ", FF0 = " + Show.number(highest),
                Show.number(model.value(model.fillFactor())));
    }

    private Step powerDensity() {
        return new Step(
                "step.powerDensity",
                "P/A = FF · Vref · J",
                Show.number(model.value(model.fillFactor())) + " · " + Show.volts(model.value(model.voltageV())) + " · "
                        + Show.currentDensity(model.value(model.currentDensityAm2())),
                Show.powerDensity(power.value()));
    }

    private Step powerAtReferenceArea() {
        return new Step(
                "step.powerAtReferenceArea",
                "P = P/A · Aref",
                Show.powerDensity(power.value()) + " · " + Show.area(reference.areaM2()),
                Show.watts(power.value() * reference.areaM2()));
    }

    private Step interval() {
        var relative = power.estimate().relativeUncertainty();
        return new Step(
                "step.interval",
                "U = 1.96 · √Σ(cᵢ uᵢ)²",
                "1.96 · " + Show.percent(relative),
                "± " + Show.percent(Estimate.COVERAGE_95 * relative));
    }

    private double currentA() {
        return cell.underLight() instanceof SpotReading spot
                ? spot.currentA().value()
                : ((LoadSweep) cell.underLight())
                        .figures()
                        .shortCircuitCurrentA()
                        .value();
    }

    private double voltageV() {
        return cell.underLight() instanceof SpotReading spot
                ? spot.voltageV().value()
                : ((LoadSweep) cell.underLight())
                        .figures()
                        .openCircuitVoltageV()
                        .value();
    }

    private double darkA() {
        return cell.darkCurrentA() == null ? 0 : cell.darkCurrentA().value();
    }
}
