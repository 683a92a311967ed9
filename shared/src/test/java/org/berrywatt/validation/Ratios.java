package org.berrywatt.validation;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The figures of one run of the benchmarks: the least disturbed iteration of each, in ms. */
record Ratios(Map<String, Double> bestMs) {
    private static final Map<String, Double> MS_PER_UNIT = Map.of("ns/op", 1e-6, "us/op", 1e-3, "ms/op", 1.0);

    static Ratios read(Path benchmarks) {
        var results = new JsonMapper().readTree(benchmarks.toFile());
        return new Ratios(elements(results).collect(Collectors.toMap(Ratios::name, Ratios::bestMs)));
    }

    List<Row> rows() {
        return List.of(
                ratio("current at a voltage", "DiodeSolve.current", "DiodeSolve.currentByBisection", "bisection", 10),
                ratio("current at a voltage", "DiodeSolve.current", "DiodeSolve.currentByBrent", "Brent's rule", 10),
                ratio("voltage at a current", "DiodeSolve.voltage", "DiodeSolve.voltageByBisection", "bisection", 10),
                ratio("voltage at a current", "DiodeSolve.voltage", "DiodeSolve.voltageByBrent", "Brent's rule", 10),
                time("fit of 26 points", "CurveFit.fit", 2),
                time("100,000 trials of 20 inputs, interval included", "MonteCarloTrials.result", 100),
                atMost(
                        "the same",
                        "drawing 2,000,000 normal numbers alone",
                        "MonteCarloTrials.result",
                        "MonteCarloTrials.drawsAlone",
                        5));
    }

    private Row ratio(String what, String ours, String theirs, String name, double wanted) {
        return Row.atLeast(
                what, name + " of the numerical library, same curves", wanted, ms(theirs) / ms(ours), "times as fast");
    }

    private Row time(String what, String benchmark, double limitMs) {
        return Row.atMost(what, "this machine", limitMs, ms(benchmark), "ms");
    }

    private Row atMost(String what, String other, String ours, String theirs, double limit) {
        return Row.atMost(what, other, limit, ms(ours) / ms(theirs), "times as long");
    }

    private double ms(String benchmark) {
        return bestMs.getOrDefault(benchmark, Double.NaN);
    }

    private static String name(JsonNode result) {
        var name = result.get("benchmark").asString();
        return name.substring(name.lastIndexOf('.', name.lastIndexOf('.') - 1) + 1);
    }

    private static double bestMs(JsonNode result) {
        var metric = result.get("primaryMetric");
        var best = elements(metric.get("rawData"))
                .flatMap(Ratios::elements)
                .mapToDouble(JsonNode::asDouble)
                .min()
                .orElse(Double.NaN);
        return best * MS_PER_UNIT.get(metric.get("scoreUnit").asString());
    }

    private static Stream<JsonNode> elements(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false);
    }
}
