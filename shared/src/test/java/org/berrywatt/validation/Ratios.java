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

    private static final String ALONE =
            "at its edge, with the fit of a diode and every team compared with 199 others;" + " holds in quieter runs";

    private static final String BRENT =
            "from brackets as narrow as can be known Brent's rule needs few steps; the factor is"
                    + " held against plain bracketing";

    static Ratios read(Path benchmarks) {
        var results = new JsonMapper().readTree(benchmarks.toFile());
        return new Ratios(elements(results).collect(Collectors.toMap(Ratios::name, Ratios::bestMs)));
    }

    List<Row> rows() {
        return List.of(
                ratio("current at a voltage", "DiodeSolve.current", "DiodeSolve.currentByBisection", "bisection", 10),
                ratio("current at a voltage", "DiodeSolve.current", "DiodeSolve.currentByBrent", "Brent's rule", 10)
                        .knownToMiss(BRENT),
                ratio("voltage at a current", "DiodeSolve.voltage", "DiodeSolve.voltageByBisection", "bisection", 10),
                ratio("voltage at a current", "DiodeSolve.voltage", "DiodeSolve.voltageByBrent", "Brent's rule", 10)
                        .knownToMiss(BRENT),
                changed("light reading, 40 teams of 5", "OneReading.reading/5"),
                changed("load sweep, 40 teams of 5", "OneReading.loadSweep/5"),
                changed("light reading, 200 teams of 1", "OneReading.reading/1"),
                changed("load sweep, 200 teams of 1", "OneReading.loadSweep/1").knownToMiss(ALONE),
                Row.atLeast(
                        "the first of these",
                        "judging and ranking all 200 cells anew",
                        10,
                        ms("OneReading.allAnew/5") / ms("OneReading.reading/5"),
                        "times as fast"),
                time("fit of 26 points", "CurveFit.fit", 2),
                time("100,000 trials of 20 inputs, interval included", "MonteCarloTrials.result", 100),
                atMost(
                        "the same",
                        "drawing 2,000,000 normal numbers alone",
                        "MonteCarloTrials.result",
                        "MonteCarloTrials.drawsAlone",
                        5),
                time("findings of a class day with all draws", "FindingsOfCells.classDayWithDraws", 2_000),
                time("findings of 10,000 cells with 8 parameters, no draws", "FindingsOfCells.tenThousand", 1_000),
                time(
                        "findings of 100,000 cells with 8 parameters, no draws",
                        "FindingsOfCells.hundredThousand",
                        10_000));
    }

    private Row ratio(String what, String ours, String theirs, String name, double wanted) {
        return Row.atLeast(
                what, name + " of the numerical library, same curves", wanted, ms(theirs) / ms(ours), "times as fast");
    }

    private Row changed(String what, String benchmark) {
        return time("leaderboard of 200 cells with 10,000 trials after one " + what, benchmark, 20);
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

    /** The class and method, then the values of its parameters. */
    private static String name(JsonNode result) {
        var path = result.get("benchmark").asString();
        var name = path.substring(path.lastIndexOf('.', path.lastIndexOf('.') - 1) + 1);
        return Stream.ofNullable(result.get("params"))
                .flatMap(Ratios::elements)
                .map(JsonNode::asString)
                .reduce(name, (named, value) -> named + "/" + value);
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
