package org.berrywatt.benchmark;

import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.berrywatt.curve.Diode;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A published curve: its diode and the voltages at which it is tabulated. The files name their sources.
 *
 * @param voltagesV from short to open circuit
 */
record PublishedCurve(Diode diode, List<Double> voltagesV) {
    private static final double ZERO_CELSIUS_K = 273.15;

    /** Eighteen curves, from silicon cells and modules to leaky home-made dye cells. */
    static List<PublishedCurve> all() {
        return Stream.concat(
                        curves("single_diode_precise.json").map(PublishedCurve::silicon),
                        curves("dye_cell_regime.json").map(PublishedCurve::dyeCell))
                .toList();
    }

    private static Stream<JsonNode> curves(String file) {
        return elements(new JsonMapper()
                .readTree(PublishedCurve.class.getResourceAsStream("/curve/" + file))
                .get("curves"));
    }

    private static PublishedCurve silicon(JsonNode node) {
        var ideality =
                number(node, "ideality_per_cell") * node.get("cells_in_series").asInt();
        var temperatureC = number(node, "temperature_K") - ZERO_CELSIUS_K;
        return within(diode(node, ideality, temperatureC), elements(node.get("voltages")));
    }

    private static PublishedCurve dyeCell(JsonNode node) {
        var diode = diode(node, number(node, "ideality"), number(node, "temperature_C"));
        return within(diode, elements(node.get("points_voltage_current")).map(pair -> pair.get(0)));
    }

    private static Diode diode(JsonNode node, double idealityFactor, double temperatureC) {
        return new Diode(
                number(node, "photocurrent_A"),
                number(node, "saturation_current_A"),
                idealityFactor,
                number(node, "resistance_series_ohm"),
                number(node, "resistance_shunt_ohm"),
                temperatureC);
    }

    private static PublishedCurve within(Diode diode, Stream<JsonNode> voltages) {
        var openV = diode.openCircuitVoltageV();
        return new PublishedCurve(
                diode,
                voltages.map(node -> Double.parseDouble(node.asString()))
                        .filter(voltageV -> voltageV >= 0 && voltageV <= openV)
                        .toList());
    }

    private static Stream<JsonNode> elements(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false);
    }

    private static double number(JsonNode node, String name) {
        return Double.parseDouble(node.get(name).asString());
    }
}
