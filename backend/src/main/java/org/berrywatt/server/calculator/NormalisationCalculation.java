package org.berrywatt.server.calculator;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.Remark;
import org.berrywatt.contract.calculation.NormalisationAnswer;
import org.berrywatt.contract.calculation.NormalisationRequest;
import org.berrywatt.normalise.CellMeasurement;
import org.berrywatt.normalise.CellTemperature;
import org.berrywatt.normalise.Measurand;
import org.berrywatt.normalise.Normalisation;
import org.berrywatt.normalise.NormalisationRefused;
import org.berrywatt.normalise.Reference;
import org.berrywatt.normalise.Result;
import org.berrywatt.quantity.TypedArea;
import org.berrywatt.server.worked.Worked;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/** A cell's result from everything that was read of it: the same pipeline as a lab day's. */
final class NormalisationCalculation {

    private static final double M2_PER_CM2 = 1e-4;
    private static final double STANDARD_WM2 = 1000;
    private static final double REFERENCE_CM2 = 1;
    private static final int TRIALS = 10_000;
    private static final String CELL = "cell";

    private NormalisationCalculation() {}

    static NormalisationAnswer of(NormalisationRequest request) {
        var light = CellLight.of(request);
        var measurement = new CellMeasurement(
                CellReading.underLight(request),
                CellReading.darkCurrent(request),
                areaM2(request),
                light.atCell(),
                CELL,
                temperature(request));
        var reference = reference(request);
        try {
            var deviates = new Deviates(Objects.requireNonNullElse(request.seed(), 1L), TRIALS);
            return answer(Normalisation.of(measurement, reference), deviates, light.notes(), reference);
        } catch (NormalisationRefused refused) {
            throw NormalisationRefusals.of(refused);
        }
    }

    private static Estimate areaM2(NormalisationRequest request) {
        var areaM2 = Ranges.AREA_CM2.need("areaCm2", request.areaCm2()) * M2_PER_CM2;
        var ruledCm2 = TypedArea.squareUncertaintyM2(areaM2) / M2_PER_CM2;
        var uncertaintyCm2 =
                Ranges.AREA_UNCERTAINTY_CM2.or(ruledCm2, "areaUncertaintyCm2", request.areaUncertaintyCm2());
        return new Estimate(areaM2, uncertaintyCm2 * M2_PER_CM2);
    }

    private static @Nullable CellTemperature temperature(NormalisationRequest request) {
        var celsius = Ranges.CELL_C.maybe("temperatureC", request.temperatureC());
        var uncertainty =
                Ranges.TEMPERATURE_UNCERTAINTY_C.or(1, "temperatureUncertaintyC", request.temperatureUncertaintyC());
        var currentPart = Ranges.PER_KELVIN.maybe("currentPerKelvin", request.currentPerKelvin());
        var voltagePart = Ranges.PER_KELVIN.maybe("voltagePerKelvin", request.voltagePerKelvin());
        if (celsius == null) {
            return null;
        }
        var usual = CellTemperature.measured(new Estimate(celsius, uncertainty));
        return new CellTemperature(
                usual.celsius(),
                Objects.requireNonNullElse(currentPart, usual.currentPerKelvin()),
                Objects.requireNonNullElse(voltagePart, usual.voltagePerKelvin()));
    }

    private static Reference reference(NormalisationRequest request) {
        return new Reference(
                Ranges.IRRADIANCE_WM2.or(STANDARD_WM2, "referenceIrradianceWm2", request.referenceIrradianceWm2()),
                Ranges.AREA_CM2.or(REFERENCE_CM2, "referenceAreaCm2", request.referenceAreaCm2()) * M2_PER_CM2);
    }

    private static NormalisationAnswer answer(
            Result result, Deviates deviates, List<Remark> ofLight, Reference reference) {
        var power = figure(result, Measurand.POWER_DENSITY, deviates);
        return new NormalisationAnswer(
                Worked.figure(result.irradiance().effectiveWm2()),
                Worked.figure(result.irradiance().totalWm2()),
                figure(result, Measurand.CURRENT_DENSITY, deviates),
                figure(result, Measurand.VOLTAGE, deviates),
                figure(result, Measurand.FILL_FACTOR, deviates),
                power,
                Worked.times(power, reference.areaM2()),
                figure(result, Measurand.EFFICIENCY, deviates),
                Worked.steps(result.steps()),
                Worked.budget(result.powerDensityWm2()),
                Stream.concat(Worked.notes(result.notes()), ofLight.stream()).toList());
    }

    private static Figure figure(Result result, Measurand measurand, Deviates deviates) {
        var estimate = result.evaluation().budget(measurand).estimate();
        return Worked.figure(estimate, result.interval(measurand, deviates, CELL));
    }
}
