package org.berrywatt.server.calculator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class FindingsCalculationTest {

    private final Calculator calculator;

    @Autowired
    FindingsCalculationTest(MockMvcTester server, JsonMapper json) {
        calculator = new Calculator(server, json);
    }

    /** M. Hollander and D. A. Wolfe, Nonparametric Statistical Methods (1973), p. 69: permeability, 10 against 5. */
    @Test
    void agreesWithPublishedRankSumTest() {
        double[] term = {0.80, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46};
        double[] weeks = {1.15, 0.88, 0.90, 0.74, 1.21};
        var rows = new ArrayList<Map<String, Object>>();
        for (double value : term) {
            rows.add(Map.of("y", value, "age", "term"));
        }
        for (double value : weeks) {
            rows.add(Map.of("y", value, "age", "weeks"));
        }
        var age = ask("y", List.of("age"), null, rows).get("parameters").get(0);
        assertThat(age.get("tests").get("mannWhitney").get("u").asDouble()).isEqualTo(35);
        // p = 0.2544, stated in the help page of R's wilcox.test and recomputed by counting all 3003 deals
        assertThat(age.get("p").asDouble()).isCloseTo(0.254412254412254, within(1e-12));
        assertThat(age.get("strength").asString()).isEqualTo("cannotTell");
    }

    /** J. C. Pinheiro and D. M. Bates, Mixed-Effects Models in S and S-PLUS (2000), section 1.2, of logarithms. */
    @Test
    void separatesParametersFromBlocks() {
        double[][] effort = {
            {12, 15, 12, 10},
            {10, 14, 13, 12},
            {7, 14, 13, 9},
            {7, 11, 10, 9},
            {8, 11, 8, 7},
            {9, 11, 11, 10},
            {8, 12, 12, 11},
            {7, 11, 8, 7},
            {9, 13, 10, 8}
        };
        var rows = new ArrayList<Map<String, Object>>();
        for (int person = 0; person < effort.length; person++) {
            for (int stool = 0; stool < 4; stool++) {
                rows.add(Map.of("y", Math.exp(effort[person][stool]), "who", "p" + person, "stool", "T" + (stool + 1)));
            }
        }
        var joint = ask("y", List.of("stool"), "who", rows).get("joint");
        assertThat(joint.get("teamDeviation").asDouble()).isCloseTo(1.3324649950235, within(1e-6));
        assertThat(joint.get("cellDeviation").asDouble()).isCloseTo(1.10029457335213, within(1e-6));
        var means = joint.get("terms").get(0).get("means");
        // T2 is 3.888889 above T1
        assertThat(Math.log(means.get(1).get("value").asDouble())
                        - Math.log(means.get(0).get("value").asDouble()))
                .isCloseTo(3.88888888888889, within(1e-6));
    }

    @Test
    void namesWhatAlwaysChangedTogether() {
        var rows = IntStream.range(0, 12)
                .mapToObj(i -> Map.<String, Object>of("y", 1 + i, "a", i % 2, "b", i % 2 == 0 ? "x" : "z", "t", i / 4))
                .toList();
        var answer = ask("y", List.of("a", "b"), "t", rows);
        assertThat(answer.get("aliasSets").get(0).toString()).isEqualTo("[\"a\",\"b\"]");
        assertThat(answer.get("parameters").get(0).get("confoundedWith").asString())
                .isEqualTo("b");
    }

    /** Two failures of three against none of three. */
    @Test
    void countsFailuresAndWaitingCells() {
        var rows = new ArrayList<Map<String, Object>>();
        for (int i = 0; i < 6; i++) {
            var row = new HashMap<String, Object>();
            row.put("level", i < 3 ? "a" : "b");
            row.put("y", i < 2 ? "failed" : i + 1.0);
            rows.add(row);
        }
        var level = ask("y", List.of("level"), null, rows).get("parameters").get(0);
        assertThat(level.get("levels").get(0).get("failed").asInt()).isEqualTo(2);
        // two failures among six fall both in a: 3 of 15 ways, both in b: 3 of 15
        assertThat(level.get("tests").get("fisher").get("p").asDouble()).isCloseTo(6 / 15.0, within(1e-12));
    }

    @Test
    void refusesTablesThatCannotBeRead() {
        List<Map<String, Object>> rows =
                List.of(Map.of("y", 1, "a", 1), Map.of("y", "much", "a", 2), Map.of("y", 3, "a", 3));
        var problem = calculator.problem("findings", body("y", List.of("a"), null, rows), "calculation.outOfRange");
        assertThat(problem.field()).isEqualTo("rows[1].y");
        assertThat(calculator
                        .problem("findings", body("y", List.of("a", "a"), null, rows), "calculation.twice")
                        .field())
                .isEqualTo("parameters[1]");
        assertThat(calculator
                        .problem(
                                "findings", body("y", List.of("a"), null, rows.subList(0, 2)), "calculation.listLength")
                        .limit())
                .isEqualTo("[3, 2000]");
    }

    /** R. G. Newcombe, Statistics in Medicine 17 (1998), table I; R. A. Fisher's tea; D. Firth's penalty by G. Heinze. */
    @Test
    void agreesWithPublishedYields() {
        var share = calculator.answer("yield", rows(Map.of("level", "a", "made", 263, "worked", 81)));
        assertThat(share.get("rows").get(0).get("low").asDouble()).isCloseTo(0.2553, within(5e-5));
        assertThat(share.get("rows").get(0).get("high").asDouble()).isCloseTo(0.3662, within(5e-5));
        assertThat(share.get("fisher").isNull()).isTrue();
        var tea = calculator.answer(
                "yield",
                rows(Map.of("level", "milk", "made", 4, "worked", 3), Map.of("level", "tea", "made", 4, "worked", 1)));
        assertThat(tea.get("fisher").get("p").asDouble()).isCloseTo(0.485714285714286, within(1e-12));
        var steps = calculator.answer(
                "yield",
                Map.of(
                        "rows",
                        IntStream.rangeClosed(1, 8)
                                .mapToObj(x -> Map.of("value", x, "made", 1, "worked", x > 4 ? 1 : 0))
                                .toList()));
        var slope = steps.get("logistic").get("coefficients").get(1);
        // complete separation, computed with an independent implementation of the penalty
        assertThat(slope.get("estimate").asDouble()).isCloseTo(1.03274439332864, within(1e-6));
        assertThat(slope.get("p").asDouble()).isCloseTo(0.0166236112039036, within(1e-6));
    }

    @Test
    void refusesYieldsThatCannotBe() {
        var problem =
                calculator.problem("yield", rows(Map.of("level", "a", "made", 3, "worked", 4)), "quantity.impossible");
        assertThat(problem.field()).isEqualTo("rows[0].worked");
        calculator.problem("yield", rows(Map.of("made", 3, "worked", 1)), "calculation.either");
        assertThat(calculator
                        .problem(
                                "yield",
                                rows(
                                        Map.of("level", "a", "made", 3, "worked", 1),
                                        Map.of("value", 2, "made", 3, "worked", 1)),
                                "calculation.either")
                        .field())
                .isEqualTo("rows[1].level");
    }

    private static Map<String, Object> rows(Object... rows) {
        return Map.of("rows", List.of(rows));
    }

    private JsonNode ask(
            String outcome, List<String> parameters, @Nullable String block, List<Map<String, Object>> rows) {
        return Objects.requireNonNull(calculator.answer("findings", body(outcome, parameters, block, rows)));
    }

    private static Map<String, Object> body(
            String outcome, List<String> parameters, @Nullable String block, List<Map<String, Object>> rows) {
        var body = new HashMap<String, Object>(Map.of("outcome", outcome, "parameters", parameters, "rows", rows));
        if (block != null) {
            body.put("block", block);
        }
        return body;
    }
}
