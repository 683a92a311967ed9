package org.berrywatt.server.calculator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.calculator.ReferenceCurves.Curve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class DiodeCalculationTest {

    private static final double ACCURACY = 1e-12;
    private static final Map<String, Object> DYE_CELL = Map.of(
            "photocurrentA",
            1e-3,
            "saturationCurrentA",
            1e-7,
            "idealityFactor",
            2,
            "seriesResistanceOhm",
            50,
            "shuntResistanceOhm",
            5000,
            "voltagesV",
            List.of(0, 0.3));

    private final Calculator calculator;

    @Autowired
    DiodeCalculationTest(MockMvcTester server, JsonMapper json) {
        calculator = new Calculator(server, json);
    }

    static Stream<Curve> exactCurves() {
        return Stream.concat(ReferenceCurves.silicon(), ReferenceCurves.dyeCells());
    }

    @ParameterizedTest
    @MethodSource("exactCurves")
    void answersExactCurvesToTwelveDigits(Curve curve) {
        var answer = calculator.answer("diode", curve.request());
        IntStream.range(0, curve.currentsA().size()).forEach(i -> {
            var exactA = curve.currentsA().get(i);
            // relative; absolute against a hundredth of the photocurrent where a current is near 0
            var reachA = Math.max(Math.abs(exactA), 1e-2 * curve.shortCircuitCurrentA());
            assertThat(answer.get("currentsA").get(i).asDouble()).isCloseTo(exactA, within(ACCURACY * reachA));
        });
        curve.values()
                .forEach((name, exact) ->
                        assertThat(answer.get(name).asDouble()).as(name).isCloseTo(exact, within(ACCURACY * exact)));
    }

    @Test
    void takesOneCellAtRoomTemperatureUnlessToldOtherwise() {
        var spelledOut = new HashMap<>(DYE_CELL);
        spelledOut.putAll(Map.of("cellsInSeries", 1, "temperatureC", 25));
        assertThat(calculator.answer("diode", DYE_CELL)).isEqualTo(calculator.answer("diode", spelledOut));
    }

    @Test
    void takesACellWithoutAShunt() {
        // Iph 4 mA, I0 2 nA, n 1.6, no shunt at 25 °C: reference voc_log_law, mpmath, 40 digits
        var answer = calculator.answer(
                "diode",
                Map.of(
                        "photocurrentA", 4e-3,
                        "saturationCurrentA", 2e-9,
                        "idealityFactor", 1.6,
                        "seriesResistanceOhm", 25,
                        "voltagesV", List.of()));
        assertThat(answer.get("openCircuitVoltageV").asDouble()).isCloseTo(0.596423759574519, within(1e-14));
        assertThat(answer.get("currentsA")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        photocurrentA       | -1e-9  | [0, 10000] A
        saturationCurrentA  | 0      | [1e-100, 10000] A
        idealityFactor      | 0.09   | [0.1, 100]
        seriesResistanceOhm | -1     | [0, 1e9] Ω
        shuntResistanceOhm  | 0      | [1e-6, 1e15] Ω
        temperatureC        | -273.2 | [-100, 300] °C
        photocurrentA       | NaN    | [0, 10000] A
        """)
    void refusesAParameterOutOfRange(String field, double value, String limit) {
        var request = new HashMap<>(DYE_CELL);
        request.put(field, value);
        var problem = calculator.problem("diode", request, "calculation.outOfRange");
        assertThat(problem.status()).isEqualTo(422);
        assertThat(problem.field()).isEqualTo(field);
        assertThat(problem.value()).isEqualTo(String.valueOf(value));
        assertThat(problem.limit()).isEqualTo(limit);
    }

    @Test
    void refusesAVoltageThatIsOutOfRangeByItsPlace() {
        var request = new HashMap<>(DYE_CELL);
        request.put("voltagesV", List.of(0.1, 20_000));
        assertThat(calculator
                        .problem("diode", request, "calculation.outOfRange")
                        .field())
                .isEqualTo("voltagesV[1]");
    }

    @Test
    void refusesAMissingParameter() {
        var request = new HashMap<>(DYE_CELL);
        request.remove("idealityFactor");
        assertThat(calculator.problem("diode", request, "value.missing").field())
                .isEqualTo("idealityFactor");
    }

    @Test
    void refusesMoreVoltagesThanAScreenHasPoints() {
        var request = new HashMap<>(DYE_CELL);
        request.put("voltagesV", IntStream.rangeClosed(0, 1000).boxed().toList());
        var problem = calculator.problem("diode", request, "calculation.listLength");
        assertThat(problem.value()).isEqualTo("1001");
        assertThat(problem.limit()).isEqualTo("[0, 1000]");
    }

    @Test
    void refusesACountOfCellsOutOfRange() {
        var request = new HashMap<>(DYE_CELL);
        request.put("cellsInSeries", 0);
        assertThat(calculator.problem("diode", request, "quantity.impossible").limit())
                .isEqualTo("[1, 1000]");
    }
}
