package org.berrywatt.server.calculator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class LeaderboardCalculationTest {

    /** Four standard deviations of a share of 10,000 trials. */
    private static final double CHANCE = 0.02;

    private final Calculator calculator;
    private final JsonMapper json;

    @Autowired
    LeaderboardCalculationTest(MockMvcTester server, JsonMapper json) {
        calculator = new Calculator(server, json);
        this.json = json;
    }

    private static Map<String, Object> cell(String team, String cell, double value, double u) {
        return new HashMap<>(Map.of("team", team, "cell", cell, "value", value, "standardUncertainty", u));
    }

    private static Map<String, Object> failed(String team, String cell) {
        return new HashMap<>(Map.of("team", team, "cell", cell, "state", "failed"));
    }

    private static Map<String, Object> request(String count, List<Map<String, Object>> cells) {
        return new HashMap<>(Map.of("rule", new HashMap<>(Map.of("count", count)), "seed", 5, "cells", cells));
    }

    private JsonNode entries(Map<String, Object> request) {
        return calculator.answer("leaderboard", request).get("entries");
    }

    private static List<String> texts(JsonNode entries, String name) {
        return StreamSupport.stream(entries.spliterator(), false)
                .map(entry -> entry.get(name).asString())
                .toList();
    }

    /** Independent normal scores: place intervals by quadrature and Φ((m − m′)/√(u² + u′²)), from the file (no publication). */
    @Test
    void findsThePlacesOfIndependentNormalResults() throws IOException {
        for (var one : published().get("cases")) {
            var teams = one.get("mean").size();
            var cells = IntStream.range(0, teams)
                    .mapToObj(
                            i -> cell("team " + i, "c", number(one, "mean", i), number(one, "standard_uncertainty", i)))
                    .toList();
            var entries = entries(request("medianOfDeclared", cells));
            for (var i = 0; i < teams; i++) {
                var team = index(entries.get(i));
                var interval = one.get("rank_interval_95").get(team);
                assertThat(entries.get(i).get("placeLow")).isEqualTo(interval.get(0));
                assertThat(entries.get(i).get("placeHigh")).isEqualTo(interval.get(1));
                if (i + 1 < teams) {
                    var better =
                            one.get("probability_better_pairwise").get(team).get(index(entries.get(i + 1)));
                    assertThat(entries.get(i).get("chanceAboveNext").asDouble())
                            .isCloseTo(Double.parseDouble(better.asString()), within(CHANCE));
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void neverMindsTheOrderOfTheCells(long seed) {
        var random = new Random(seed);
        var cells = new ArrayList<Map<String, Object>>();
        for (var i = 0; i < 24; i++) {
            var team = "team " + random.nextInt(6);
            cells.add(
                    random.nextInt(5) == 0
                            ? failed(team, "c" + i)
                            : cell(team, "c" + i, random.nextInt(4) / 2.0, random.nextDouble() / 4));
        }
        var counts = List.of("medianOfDeclared", "meanOfDeclared").get((int) seed % 2);
        var first = entries(request(counts, List.copyOf(cells)));
        Collections.shuffle(cells, random);
        assertThat(entries(request(counts, cells))).isEqualTo(first);
    }

    /** What both share cancels: 1.00 and 1.05, each known to 10 % by one light meter, are apart for certain. */
    @Test
    void tellsTeamsApartWhoseUncertaintyIsShared() {
        var cells = List.of(cell("Larch", "L", 1.00, 0.01), cell("Spruce", "S", 1.05, 0.01));
        cells.forEach(cell -> cell.put("shared", List.of(Map.of("cause", "lux meter", "standardUncertainty", 0.1))));
        var entries = entries(request("medianOfDeclared", cells));
        assertThat(texts(entries, "place")).containsExactly("1", "2");
        var own = List.of(cell("Larch", "L", 1.00, 0.1), cell("Spruce", "S", 1.05, 0.1));
        assertThat(texts(entries(request("medianOfDeclared", own)), "place")).containsExactly("1", "1");
    }

    /** Median and mean of 4, 6 and a failed cell, by hand: 4 and 10/3; best verified 4, since nobody else read 6 alike. */
    @Test
    void countsAsTheRuleSays() {
        var cells = List.of(cell("Larch", "a", 4, 0), cell("Larch", "b", 6, 0), failed("Larch", "c"));
        cells.get(0).put("readAgain", List.of(4.4));
        cells.get(1).put("readAgain", List.of(9));
        assertThat(figure(request("medianOfDeclared", cells))).isEqualTo(4);
        assertThat(figure(request("meanOfDeclared", cells))).isCloseTo(10 / 3.0, within(1e-12));
        assertThat(figure(request("bestVerified", cells))).isEqualTo(4);
        assertThat(entries(request("bestVerified", cells))
                        .get(0)
                        .get("bestVerifiedCell")
                        .asString())
                .isEqualTo("a");
    }

    /** One of three declared cells read as 6: while entry is open the other two wait, then they are 0 (median, by hand). */
    @Test
    void waitsForDeclaredCellsWhileEntryIsOpen() {
        var request = request("medianOfDeclared", List.of(cell("Larch", "a", 6, 0)));
        request.put("rule", Map.of("count", "medianOfDeclared", "cellsPerTeam", 3, "entryOpen", true));
        assertThat(figure(request)).isEqualTo(6);
        request.put("rule", Map.of("count", "medianOfDeclared", "cellsPerTeam", 3, "entryOpen", false));
        assertThat(figure(request)).isZero();
    }

    /** JCGM 100:2008, G.1.3: a 95 % interval of a normal quantity is 1.96 standard uncertainties to either side. */
    @Test
    void takesAnIntervalInPlaceOfAStandardUncertainty() {
        var cell = new HashMap<String, Object>(Map.of("team", "Larch", "cell", "a", "value", 10, "low", 8, "high", 12));
        var figure = entries(request("medianOfDeclared", List.of(cell))).get(0).get("figure");
        assertThat(figure.get("standardUncertainty").asDouble()).isCloseTo(2 / 1.96, within(0.03));
        cell.put("standardUncertainty", 1);
        calculator.problem("leaderboard", request("medianOfDeclared", List.of(cell)), "calculation.either");
        cell.remove("standardUncertainty");
        cell.put("high", 7);
        var problem =
                calculator.problem("leaderboard", request("medianOfDeclared", List.of(cell)), "calculation.outOfRange");
        assertThat(problem.field()).isEqualTo("cells[0].high");
    }

    @Test
    void putsTeamsWithoutAResultLast() {
        var waiting = new HashMap<String, Object>(Map.of("team", "Yew", "cell", "y", "state", "waiting"));
        var entries = entries(request("medianOfDeclared", List.of(waiting, cell("Larch", "a", 1, 0.1))));
        assertThat(texts(entries, "team")).containsExactly("Larch", "Yew");
        assertThat(entries.get(1).get("place").isNull()).isTrue();
    }

    @Test
    void comparesEfficienciesOfTheBusiestStationAlone() {
        var cells = List.of(cell("Larch", "a", 1, 0), cell("Larch", "b", 2, 0), cell("Spruce", "s", 9, 0));
        cells.forEach(cell -> cell.put("station", Objects.equals(cell.get("team"), "Larch") ? "window" : "lamp"));
        var request = request("meanOfDeclared", cells);
        request.put("rule", Map.of("metric", "efficiencyAsMeasured", "count", "meanOfDeclared"));
        var entries = entries(request);
        assertThat(texts(entries, "team")).containsExactly("Larch", "Spruce");
        assertThat(entries.get(1).get("excluded").asInt()).isEqualTo(1);
    }

    /** 2 and 3 over a control cell of 2, all known to 10 % by one light meter that cancels: 1 and 1.5 for certain. */
    @Test
    void dividesByTheControlCellTrialByTrial() {
        var cells = List.of(cell("Larch", "control", 2, 0), cell("Spruce", "s", 3, 0), failed("Yew", "y"));
        cells.subList(0, 2)
                .forEach(cell -> cell.put(
                        "shared",
                        List.of(Map.of(
                                "cause",
                                "lux meter",
                                "standardUncertainty",
                                0.1 * (double) Objects.requireNonNull(cell.get("value"))))));
        var request = request("medianOfDeclared", cells);
        var control = Map.of("team", "Larch", "cell", "control");
        request.put("rule", Map.of("metric", "ratioToControl", "count", "medianOfDeclared", "control", control));
        var entries = entries(request);
        assertThat(texts(entries, "team")).containsExactly("Spruce", "Larch", "Yew");
        assertThat(entries.get(0).at("/figure/value").asDouble()).isCloseTo(1.5, within(1e-12));
        assertThat(entries.get(0).at("/figure/standardUncertainty").asDouble()).isCloseTo(0, within(1e-12));
        var strange = Map.of("team", "Larch", "cell", "none");
        request.put("rule", Map.of("metric", "ratioToControl", "count", "medianOfDeclared", "control", strange));
        assertThat(calculator.problem("leaderboard", request, "choice.unknown").field())
                .isEqualTo("rule.control.cell");
    }

    @Test
    void refusesRulesThatMakeNoSense() {
        var request = request("medianOfDeclared", List.of(cell("Larch", "a", 1, 0)));
        request.put("rule", Map.of("metric", "yield", "count", "medianOfDeclared"));
        calculator.problem("leaderboard", request, "rule.share");
        request.put("rule", Map.of("metric", "retention", "count", "bestVerified"));
        calculator.problem("leaderboard", request, "rule.ageing");
    }

    @Test
    void refusesOneCellTwiceAnUnknownRuleAndTooManyCells() {
        var twice = List.of(cell("Larch", "a", 1, 0), cell("Larch", "a", 2, 0));
        assertThat(calculator
                        .problem("leaderboard", request("medianOfDeclared", twice), "calculation.twice")
                        .field())
                .isEqualTo("cells[1]");
        assertThat(calculator
                        .problem("leaderboard", request("luckiest", twice), "choice.unknown")
                        .field())
                .isEqualTo("rule.count");
        var many =
                IntStream.range(0, 241).mapToObj(i -> cell("T", "c" + i, 1, 0)).toList();
        assertThat(calculator
                        .problem("leaderboard", request("medianOfDeclared", many), "calculation.listLength")
                        .limit())
                .isEqualTo("[1, 240]");
    }

    private double figure(Map<String, Object> request) {
        return entries(request).get(0).get("figure").get("value").asDouble();
    }

    private static int index(JsonNode entry) {
        return Integer.parseInt(entry.get("team").asString().substring("team ".length()));
    }

    private static double number(JsonNode one, String name, int i) {
        return Double.parseDouble(one.get(name).get(i).asString());
    }

    private JsonNode published() throws IOException {
        try (var file = Objects.requireNonNull(
                LeaderboardCalculationTest.class.getResourceAsStream("/calculator/ranking_uncertainty.json"))) {
            return json.readTree(file);
        }
    }
}
