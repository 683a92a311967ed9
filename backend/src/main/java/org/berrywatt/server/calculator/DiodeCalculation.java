package org.berrywatt.server.calculator;

import java.util.List;
import org.berrywatt.contract.calculation.DiodeAnswer;
import org.berrywatt.contract.calculation.DiodeRequest;
import org.berrywatt.curve.Diode;
import org.jspecify.annotations.Nullable;

/** The curve of a single diode. */
final class DiodeCalculation {

    private static final int MOST_VOLTAGES = 1000;

    private DiodeCalculation() {}

    static DiodeAnswer of(DiodeRequest request) {
        var diode = diode(request);
        var peak = diode.maximumPower();
        return new DiodeAnswer(
                voltagesV(request.voltagesV()).stream().map(diode::currentA).toList(),
                diode.shortCircuitCurrentA(),
                diode.openCircuitVoltageV(),
                peak.powerW(),
                peak.voltageV(),
                peak.currentA());
    }

    private static Diode diode(DiodeRequest request) {
        return new Diode(
                Ranges.PHOTOCURRENT_A.need("photocurrentA", request.photocurrentA()),
                Ranges.SATURATION_CURRENT_A.need("saturationCurrentA", request.saturationCurrentA()),
                Ranges.IDEALITY_FACTOR.need("idealityFactor", request.idealityFactor())
                        * Series.cells(request.cellsInSeries()),
                Ranges.SERIES_OHM.need("seriesResistanceOhm", request.seriesResistanceOhm()),
                Ranges.SHUNT_OHM.or(Double.POSITIVE_INFINITY, "shuntResistanceOhm", request.shuntResistanceOhm()),
                Ranges.TEMPERATURE_C.or(Ranges.ROOM_C, "temperatureC", request.temperatureC()));
    }

    private static List<Double> voltagesV(@Nullable List<@Nullable Double> given) {
        return Entries.read("voltagesV", given, 0, MOST_VOLTAGES, Ranges.VOLTAGE_V::need);
    }
}
