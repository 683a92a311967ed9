package org.berrywatt.curve;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Exact single-diode curves among the test resources; each file names its source and how it was checked. */
final class ReferenceCurves {
    private static final double ZERO_CELSIUS_K = 273.15;

    /** A curve with its diode, its points and the key values by name. */
    record Curve(String id, Diode diode, List<double[]> points, JsonNode values) {
        double value(String name) {
            return number(values.get(name));
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

    static double number(JsonNode node) {
        return Double.parseDouble(node.asString());
    }

    private static Stream<JsonNode> curves(String file) {
        var tree = new JsonMapper().readTree(ReferenceCurves.class.getResourceAsStream("/curve/" + file));
        return StreamSupport.stream(tree.get("curves").spliterator(), false);
    }

    private static Curve silicon(JsonNode node) {
        var diode = new Diode(
                number(node.get("photocurrent_A")),
                number(node.get("saturation_current_A")),
                number(node.get("ideality_per_cell"))
                        * node.get("cells_in_series").asInt(),
                number(node.get("resistance_series_ohm")),
                number(node.get("resistance_shunt_ohm")),
                number(node.get("temperature_K")) - ZERO_CELSIUS_K);
        var points = IntStream.range(0, node.get("voltages").size())
                .mapToObj(i -> new double[] {
                    number(node.get("voltages").get(i)),
                    number(node.get("currents").get(i))
                })
                .toList();
        return new Curve(node.get("id").asString(), diode, points, node);
    }

    private static Curve dyeCell(JsonNode node) {
        var diode = new Diode(
                number(node.get("photocurrent_A")),
                number(node.get("saturation_current_A")),
                number(node.get("ideality")),
                number(node.get("resistance_series_ohm")),
                number(node.get("resistance_shunt_ohm")),
                number(node.get("temperature_C")));
        var points = StreamSupport.stream(node.get("points_voltage_current").spliterator(), false)
                .map(pair -> new double[] {number(pair.get(0)), number(pair.get(1))})
                .toList();
        return new Curve(node.get("id").asString(), diode, points, node);
    }
}
