package org.berrywatt.benchmark;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.berrywatt.curve.Diode;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A published curve between short and open circuit. The files name their sources. */
final class PublishedCurve {
    private static final double ZERO_CELSIUS_K = 273.15;

    private final Diode diode;
    private final double[] voltagesV;
    private final double[] currentsA;

    private PublishedCurve(Diode diode, Stream<JsonNode> voltages) {
        var openV = diode.openCircuitVoltageV();
        this.diode = diode;
        this.voltagesV = voltages.mapToDouble(node -> Double.parseDouble(node.asString()))
                .filter(voltageV -> voltageV >= 0 && voltageV <= openV)
                .toArray();
        this.currentsA = DoubleStream.of(voltagesV).map(diode::currentA).toArray();
    }

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
        return new PublishedCurve(diode(node, ideality, temperatureC), elements(node.get("voltages")));
    }

    private static PublishedCurve dyeCell(JsonNode node) {
        var diode = diode(node, number(node, "ideality"), number(node, "temperature_C"));
        return new PublishedCurve(
                diode, elements(node.get("points_voltage_current")).map(pair -> pair.get(0)));
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

    Diode diode() {
        return diode;
    }

    double[] voltagesV() {
        return voltagesV;
    }

    double[] currentsA() {
        return currentsA;
    }

    private static Stream<JsonNode> elements(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false);
    }

    private static double number(JsonNode node, String name) {
        return Double.parseDouble(node.get(name).asString());
    }
}
