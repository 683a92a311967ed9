package org.berrywatt.server.calculator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Published results of JCGM 100 and 101 are from memory unless a table is named. */
@ServerTest
class UncertaintyCalculationTest {

    private static final int TRIALS = 200_000;

    private final Calculator calculator;

    @Autowired
    UncertaintyCalculationTest(MockMvcTester server, JsonMapper json) {
        calculator = new Calculator(server, json);
    }

    private static Map<String, Object> input(String name, double value, double u, String shape) {
        return new HashMap<>(Map.of("name", name, "value", value, "u", u, "shape", shape));
    }

    private static Map<String, Object> input(String name, double value, double u, double degreesOfFreedom) {
        var input = input(name, value, u, "normal");
        input.put("dof", degreesOfFreedom);
        return input;
    }

    private JsonNode answer(String model, List<Map<String, Object>> inputs) {
        return calculator.answer("uncertainty", Map.of("model", model, "inputs", inputs, "trials", TRIALS));
    }

    private static List<Map<String, Object>> four(String shape, double uOfLast) {
        return IntStream.range(0, 4)
                .mapToObj(i -> input("x" + i, 0, i < 3 ? 1 : uOfLast, shape))
                .toList();
    }

    /** JCGM 101:2008, 9.2.2 to 9.2.4: normal ±3.92; rectangular ±3.88; one ten times wider ±17.0, first order ±19.9. */
    @ParameterizedTest
    @CsvSource({"normal, 1, 2.0, 3.92, 3.92", "rectangular, 1, 2.0, 3.92, 3.88", "rectangular, 10, 10.1, 19.9, 17.0"})
    void reproducesTheSumOfFourInputs(String shape, double uOfLast, double u, double firstOrder, double monteCarlo) {
        var answer = answer("sum", four(shape, uOfLast));
        assertThat(answer.get("firstOrder").get("standardUncertainty").asDouble())
                .isCloseTo(u, within(0.06));
        assertThat(answer.get("firstOrder").get("high").asDouble()).isCloseTo(firstOrder, within(0.05));
        assertThat(answer.get("monteCarlo").get("standardDeviation").asDouble()).isCloseTo(u, within(0.08));
        assertThat(answer.get("monteCarlo").get("symmetricHigh").asDouble())
                .isCloseTo(monteCarlo, within(0.02 * monteCarlo));
        assertThat(answer.get("monteCarlo").get("high").asDouble()
                        - answer.get("monteCarlo").get("low").asDouble())
                .isCloseTo(2 * monteCarlo, within(0.02 * monteCarlo));
    }

    /** JCGM 101:2008, 9.3, tables 7 and 8: u = 0.0754 mg by Monte Carlo, 0.0539 mg by first order. */
    @Test
    void reproducesTheWeightThatFirstOrderMisses() {
        var half = Math.sqrt(3);
        var answer = answer(
                "weightInAir",
                List.of(
                        input("mRc", 100_000, 0.050, "normal"),
                        input("dmRc", 1.234, 0.020, "normal"),
                        input("air", 1.20, 0.10 / half, "rectangular"),
                        input("weight", 8000, 1000 / half, "rectangular"),
                        input("reference", 8000, 50 / half, "rectangular")));
        assertThat(answer.get("firstOrder").get("value").asDouble()).isCloseTo(1.234, within(1e-6));
        assertThat(answer.get("firstOrder").get("standardUncertainty").asDouble())
                .isCloseTo(0.0539, within(5e-5));
        assertThat(answer.get("monteCarlo").get("standardDeviation").asDouble()).isCloseTo(0.0754, within(0.0006));
        assertThat(answer.get("monteCarlo").get("mean").asDouble()).isCloseTo(1.234, within(0.001));
    }

    /**
     * JCGM 101:2008, 9.4.2: x1² + x2² with u = 0.005. First order gives 0 at nought; Monte Carlo 50, 112 and 502 in 1e-6 and the
     * shortest intervals [0, 150], [0, 367] and [1590, 3543].
     */
    @ParameterizedTest
    @CsvSource({"0, 0, 50, 50, 0, 150", "0.010, 100, 150, 112, 0, 367", "0.050, 500, 2551, 502, 1590, 3543"})
    void reproducesTheComparisonLoss(
            double x1, double firstOrder, double mean, double deviation, double low, double high) {
        var answer = answer("sumOfSquares", List.of(input("x1", x1, 0.005, "normal"), input("x2", 0, 0.005, "normal")));
        assertThat(1e6 * answer.get("firstOrder").get("standardUncertainty").asDouble())
                .isCloseTo(firstOrder, within(0.5));
        var drawn = answer.get("monteCarlo");
        assertThat(1e6 * drawn.get("mean").asDouble()).isCloseTo(mean, within(0.5 + 0.005 * mean));
        assertThat(1e6 * drawn.get("standardDeviation").asDouble()).isCloseTo(deviation, within(0.02 * deviation));
        assertThat(1e6 * drawn.get("low").asDouble()).isCloseTo(low, within(25.0));
        assertThat(1e6 * drawn.get("high").asDouble()).isCloseTo(high, within(25.0));
    }

    /** JCGM 100:2008, H.1: l = 50 000 838 nm, u = 32 nm, 16.7 effective degrees of freedom, largest parts 25 and 16.6 nm. */
    @Test
    void reproducesTheEndGauge() {
        var answer = answer(
                "endGauge",
                List.of(
                        input("ls", 50_000_623, 25, 18.0),
                        input("d", 215, 9.7, 25.6),
                        input("expansion", 11.5e-6, 1.2e-6, "rectangular"),
                        input("difference", 0, 0.58e-6, 50.0),
                        input("temperature", -0.1, 0.41, "arcsine"),
                        input("warmer", 0, 0.029, 2.0)));
        var first = answer.get("firstOrder");
        assertThat(first.get("value").asDouble()).isCloseTo(50_000_838, within(0.5));
        assertThat(first.get("standardUncertainty").asDouble()).isCloseTo(32, within(0.5));
        assertThat(first.get("effectiveDegreesOfFreedom").asDouble()).isCloseTo(16.7, within(0.1));
        // JCGM 100:2008, table G.2: t95(16) = 2.12
        assertThat(first.get("high").asDouble() - first.get("value").asDouble())
                .isCloseTo(2.12 * first.get("standardUncertainty").asDouble(), within(0.2));
        assertThat(first.get("budget").get(0).get("contribution").asDouble()).isCloseTo(25, within(0.05));
        assertThat(first.get("budget").get(5).get("contribution").asDouble()).isCloseTo(16.6, within(0.1));
    }

    /** JCGM 100:2008, 5.1.6: relative uncertainties of a product of powers add up in squares; 3 % and 4 % make 5 %. */
    @ParameterizedTest
    @CsvSource({"product, 200", "ratio, 0.5"})
    void addsRelativeUncertaintiesInSquares(String model, double value) {
        var inputs = List.of(input("x1", 10, 0.3, "normal"), input("x2", 20, 0.8, "normal"));
        var first = answer(model, inputs).get("firstOrder");
        assertThat(first.get("value").asDouble()).isCloseTo(value, within(1e-9));
        assertThat(first.get("standardUncertainty").asDouble() / value).isCloseTo(0.05, within(1e-6));
        assertThat(first.get("budget").get(0).get("share").asDouble()).isCloseTo(0.36, within(1e-5));
    }

    @Test
    void drawsTheSameTrialsForTheSameSeedAndOthersForAnother() {
        var request = new HashMap<String, Object>(Map.of("model", "sum", "inputs", four("normal", 1), "trials", 1000));
        var once = calculator.answer("uncertainty", request);
        assertThat(calculator.answer("uncertainty", request)).isEqualTo(once);
        request.put("seed", 7);
        assertThat(calculator.answer("uncertainty", request)).isNotEqualTo(once);
    }

    @Test
    void refusesTwoInputsOfOneName() {
        var inputs = List.of(input("V", 1, 0.1, "normal"), input("V", 2, 0.1, "normal"));
        var problem =
                calculator.problem("uncertainty", Map.of("model", "ratio", "inputs", inputs), "calculation.twice");
        assertThat(problem.field()).isEqualTo("inputs[1]");
        assertThat(problem.detail()).contains("“V”");
    }

    @Test
    void refusesMoreInputsThanTheModelTakesAndNamesTheModels() {
        var request = new HashMap<String, Object>(Map.of("model", "ratio", "inputs", four("normal", 1)));
        assertThat(calculator
                        .problem("uncertainty", request, "calculation.listLength")
                        .limit())
                .isEqualTo("[2, 2]");
        request.put("model", "guess");
        assertThat(calculator.problem("uncertainty", request, "choice.unknown").limit())
                .contains("sum, difference", "weightInAir");
    }

    @Test
    void refusesAModelWithoutAValueAndTrialsWithoutEnd() {
        var request = new HashMap<String, Object>(
                Map.of("model", "ratio", "inputs", List.of(input("a", 1, 0.1, "normal"), input("b", 0, 0, "normal"))));
        calculator.problem("uncertainty", request, "calculation.noResult");
        request.put("trials", 1_000_000);
        assertThat(calculator
                        .problem("uncertainty", request, "quantity.impossible")
                        .field())
                .isEqualTo("trials");
    }

    @Test
    void asksForTheDegreesOfFreedomOfAFewReadings() {
        var inputs = List.of(input("a", 1, 0.1, "student"), input("b", 1, 0.1, "normal"));
        assertThat(calculator
                        .problem("uncertainty", Map.of("model", "sum", "inputs", inputs), "value.missing")
                        .field())
                .isEqualTo("inputs[0].dof");
    }
}
