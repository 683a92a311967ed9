package org.berrywatt.server.calculator;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.berrywatt.contract.calculation.CurveRequest.Point;
import org.berrywatt.contract.calculation.DiodeRequest;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Exact single-diode curves among the test resources; each file names its source and how it was checked. */
final class ReferenceCurves {

    private static final double ZERO_CELSIUS_K = 273.15;

    /** A diode as the calculator is asked about it, with its exact currents and key values, and loads on it. */
    record Curve(
            String id, DiodeRequest request, List<Point> loads, List<Double> currentsA, Map<String, Double> values) {

        double shortCircuitCurrentA() {
            return Objects.requireNonNull(values.get("shortCircuitCurrentA"));
        }

        @Override
        public String toString() {
            return id;
        }
    }

    private ReferenceCurves() {}

    static Stream<Curve> silicon() {
        return curves("single_diode_precise.json").map(ReferenceCurves::silicon);
    }

    static Stream<Curve> dyeCells() {
        return curves("dye_cell_regime.json").map(ReferenceCurves::dyeCell);
    }

    private static Stream<JsonNode> curves(String file) {
        var tree = new JsonMapper().readTree(ReferenceCurves.class.getResourceAsStream("/calculator/" + file));
        return StreamSupport.stream(tree.get("curves").spliterator(), false);
    }

    private static Curve silicon(JsonNode node) {
        var voltagesV = numbers(node.get("voltages"));
        var request = new DiodeRequest(
                number(node, "photocurrent_A"),
                number(node, "saturation_current_A"),
                number(node, "ideality_per_cell"),
                number(node, "resistance_series_ohm"),
                number(node, "resistance_shunt_ohm"),
                number(node, "temperature_K") - ZERO_CELSIUS_K,
                nullable(voltagesV),
                node.get("cells_in_series").asInt());
        return new Curve(
                node.get("id").asString(), request, List.of(), numbers(node.get("currents")), values(node, ""));
    }

    private static Curve dyeCell(JsonNode node) {
        var points = StreamSupport.stream(node.get("points_voltage_current").spliterator(), false)
                .toList();
        var voltagesV = points.stream().map(pair -> number(pair.get(0))).toList();
        var request = new DiodeRequest(
                number(node, "photocurrent_A"),
                number(node, "saturation_current_A"),
                number(node, "ideality"),
                number(node, "resistance_series_ohm"),
                number(node, "resistance_shunt_ohm"),
                number(node, "temperature_C"),
                nullable(voltagesV),
                null);
        return new Curve(
                node.get("id").asString(),
                request,
                loads(node.get("resistive_loads")),
                points.stream().map(pair -> number(pair.get(1))).toList(),
                values(node, "_A", "_V", "_W"));
    }

    private static List<Point> loads(JsonNode loads) {
        return StreamSupport.stream(loads.spliterator(), false)
                .map(load -> new Point(number(load, "voltage_V"), number(load, "current_A"), null, null, null))
                .toList();
    }

    /** Key values under their name on the wire; the files of two authors end them differently. */
    private static Map<String, Double> values(JsonNode node, String... ends) {
        var current = ends[0];
        var voltage = ends[ends.length > 1 ? 1 : 0];
        var power = ends[ends.length - 1];
        return Map.of(
                "shortCircuitCurrentA", number(node, "i_sc" + current),
                "openCircuitVoltageV", number(node, "v_oc" + voltage),
                "maximumPowerW", number(node, "p_mp" + power),
                "voltageAtMaximumPowerV", number(node, "v_mp" + voltage),
                "currentAtMaximumPowerA", number(node, "i_mp" + current));
    }

    private static List<Double> numbers(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(ReferenceCurves::number)
                .toList();
    }

    private static List<@Nullable Double> nullable(List<Double> numbers) {
        return new ArrayList<>(numbers);
    }

    private static double number(JsonNode node, String name) {
        return number(node.get(name));
    }

    private static double number(JsonNode node) {
        return Double.parseDouble(node.asString());
    }
}
