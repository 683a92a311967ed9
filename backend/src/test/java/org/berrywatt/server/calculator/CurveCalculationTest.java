package org.berrywatt.server.calculator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.berrywatt.contract.calculation.CurveRequest.Point;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.calculator.ReferenceCurves.Curve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class CurveCalculationTest {

    private static final List<String> FIGURES = List.of(
            "shortCircuitCurrentA",
            "openCircuitVoltageV",
            "maximumPowerW",
            "voltageAtMaximumPowerV",
            "currentAtMaximumPowerA");

    private final Calculator calculator;

    @Autowired
    CurveCalculationTest(MockMvcTester server, JsonMapper json) {
        calculator = new Calculator(server, json);
    }

    @Test
    void findsTheFiguresOfThePublishedSiliconCell() {
        // RTC France cell, Easwarakhanthan et al. 1986; figures of its published diode (Iph 0.76077553 A, I0 3.2302e-7
        // A,
        // Rs 0.03637709 ohm, Rsh 53.71852514 ohm, n 1.48118359 at 33 °C), solved by bisection apart from
        // this project: Isc 0.76026 A, Voc 0.57278 V, Pmax 0.31065 W; diameter 57 mm is 25.518 cm²
        var answer = calculator.answer(
                "curve", Map.of("points", rtcFrance(), "areaCm2", 25.518, "irradianceWm2", 1000, "temperatureC", 33));
        assertThat(answer.get("shortCircuitCurrentA").asDouble()).isCloseTo(0.7603, within(0.001));
        assertThat(answer.get("openCircuitVoltageV").asDouble()).isCloseTo(0.5728, within(0.001));
        assertThat(answer.get("maximumPowerW").asDouble()).isCloseTo(0.3107, within(0.001));
        assertThat(answer.get("efficiency").asDouble()).isCloseTo(0.1218, within(0.0005));
    }

    @Test
    void fitsTheDiodeOfThePublishedSiliconCell() {
        // Optimum by the solved current, recomputed for the reference table: RMSE 7.7301e-4 A, n 1.4773 at 33 °C
        var answer = calculator.answer("curve", Map.of("points", rtcFrance(), "temperatureC", 33));
        var diode = answer.get("diode");
        assertThat(diode.get("rmseA").asDouble()).isCloseTo(7.7301e-4, within(1e-8));
        assertThat(diode.get("photocurrentA").asDouble()).isCloseTo(0.7608, within(1e-3));
        assertThat(diode.get("idealityFactor").asDouble()).isCloseTo(1.48, within(0.01));
    }

    @Test
    void givesTheIdealityOfOneCellOfASeries() {
        var alone = calculator.answer("curve", Map.of("points", rtcFrance()));
        var series = calculator.answer("curve", Map.of("points", rtcFrance(), "cellsInSeries", 2));
        assertThat(series.get("diode").get("idealityFactor").asDouble())
                .isEqualTo(alone.get("diode").get("idealityFactor").asDouble() / 2);
    }

    @Test
    void saysWhichParametersAStraightLineCannotTell() {
        var diode = calculator.answer("curve", Map.of("points", straight())).get("diode");
        assertThat(diode.get("unidentifiable")).isNotEmpty();
        assertThat(diode.get("uncertainties")
                        .get("saturationCurrentA")
                        .get("low")
                        .asDouble())
                .isNotNegative();
    }

    @ParameterizedTest
    @MethodSource("org.berrywatt.server.calculator.ReferenceCurves#dyeCells")
    void holdsTheExactFiguresWithinTheirIntervals(Curve curve) {
        var answer = calculator.answer("curve", Map.of("points", curve.loads()));
        for (var figure : FIGURES) {
            var spread = answer.get("uncertainties").get(figure);
            assertThat(curve.values().get(figure))
                    .as(figure)
                    .isBetween(spread.get("low").asDouble(), spread.get("high").asDouble());
        }
    }

    @Test
    void leavesTheEfficiencyOutWithoutAreaOrLight() {
        var answer = calculator.answer("curve", Map.of("points", straight(), "areaCm2", 4));
        assertThat(answer.get("efficiency").isNull()).isTrue();
        assertThat(answer.get("uncertainties").get("efficiency").isNull()).isTrue();
    }

    @Test
    void answersEveryRowAsAPointByOhmsLaw() {
        // 0.2 V across 400 ohm is 0.5 mA (Ohm's law)
        var rows = List.of(
                new Point(0.2, null, 400.0, null, null),
                new Point(0.0, 8e-4, null, null, null),
                new Point(0.1, 6.5e-4, null, null, null),
                new Point(0.3, 2.5e-4, null, null, null),
                new Point(0.4, 0.0, null, null, null));
        var points = calculator.answer("curve", Map.of("points", rows)).get("points");
        assertThat(points).hasSize(5);
        assertThat(points.get(0).get("voltageV").asDouble()).isEqualTo(0.2);
        assertThat(points.get(0).get("currentA").asDouble()).isCloseTo(5e-4, within(1e-15));
    }

    @Test
    void takesRowsOfLoadAndVoltageOrLoadAndCurrentAsTheSamePoints() {
        var byVoltage = calculator.answer("curve", Map.of("points", loads(true)));
        var byCurrent = calculator.answer("curve", Map.of("points", loads(false)));
        assertThat(FIGURES)
                .allSatisfy(figure -> assertThat(byVoltage.get(figure).asDouble())
                        .isCloseTo(byCurrent.get(figure).asDouble(), within(1e-12)));
        // common practice, no source: a straight line has a fill factor of a quarter
        assertThat(byVoltage.get("fillFactor").asDouble()).isCloseTo(0.25, within(0.002));
    }

    @Test
    void widensTheIntervalByTheMeter() {
        var rough = straight().stream()
                .map(point -> new Point(point.voltageV(), point.currentA(), null, null, 2e-5))
                .toList();
        assertThat(uncertainty(calculator.answer("curve", Map.of("points", rough)), "shortCircuitCurrentA"))
                .isGreaterThan(
                        uncertainty(calculator.answer("curve", Map.of("points", straight())), "shortCircuitCurrentA"));
    }

    @Test
    void saysWhenTheSweepDidNotPassItsPeak() {
        var flank = straight().subList(0, 5);
        var answer = calculator.answer("curve", Map.of("points", flank));
        assertThat(answer.get("notes").get(0).get("key").asString()).isEqualTo("note.peakNotBracketed");
    }

    @Test
    void refusesRowsThatAreIncomplete() {
        var rows = new ArrayList<Point>(straight());
        rows.set(2, new Point(null, null, 100.0, null, null));
        assertThat(calculator
                        .problem("curve", Map.of("points", rows), "sweep.rowIncomplete")
                        .field())
                .isEqualTo("points[2]");
        rows.set(2, new Point(0.0, null, 0.0, null, null));
        calculator.problem("curve", Map.of("points", rows), "sweep.rowIncomplete");
    }

    @Test
    void refusesSweepsWithoutFiguresEachByItsFault() {
        refuses("calculation.listLength", straight().subList(0, 4));
        refuses("sweep.wrongQuadrant", List.of(at(-0.1, -4), at(-0.2, -3), at(-0.3, -2), at(-0.4, -1), at(-0.5, 0)));
        refuses("sweep.wrongQuadrant", List.of(at(0, 0), at(0, 0), at(0, 0), at(0, 0), at(0, 0)));
        refuses("sweep.tooFewLoads", List.of(at(0.1, 4), at(0.2, 3), at(0.3, 2), at(0.1, 4), at(0.2, 3)));
        refuses("sweep.noSpread", List.of(at(0.3, 5), at(0.302, 4), at(0.304, 3), at(0.306, 2), at(0.308, 1)));
        refuses("sweep.notFalling", List.of(at(0.1, 0.1), at(0.2, 0.4), at(0.3, 0.9), at(0.4, 1.6), at(0.5, 2.5)));
    }

    private void refuses(String code, List<Point> points) {
        var problem = calculator.problem("curve", Map.of("points", points), code);
        assertThat(problem.status()).isEqualTo(422);
        assertThat(problem.field()).startsWith("points");
    }

    private static double uncertainty(JsonNode answer, String figure) {
        return answer.get("uncertainties")
                .get(figure)
                .get("standardUncertainty")
                .asDouble();
    }

    /** The line from 1 mA to 0.5 V. */
    private static List<Point> straight() {
        return IntStream.rangeClosed(0, 10)
                .mapToObj(i -> at(0.05 * i, 1e-3 * (1 - i / 10.0)))
                .toList();
    }

    /** Loads on the same line, with the voltage or with the current over them. */
    private static List<Point> loads(boolean voltage) {
        return DoubleStream.of(10, 33, 100, 330, 1e3, 3.3e3, 1e4, 3.3e4, 1e5)
                .mapToObj(ohm -> voltage
                        ? new Point(0.5 * ohm / (ohm + 500), null, ohm, null, null)
                        : new Point(null, 0.5 / (ohm + 500), ohm, null, null))
                .toList();
    }

    private static List<Point> rtcFrance() {
        var file = Objects.requireNonNull(
                CurveCalculationTest.class.getResourceAsStream("/calculator/rtc_france_57mm.csv"));
        return new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))
                .lines()
                .filter(line -> !line.startsWith("#") && !line.startsWith("voltage"))
                .map(line -> line.split(","))
                .map(row -> at(Double.parseDouble(row[0]), Double.parseDouble(row[1])))
                .toList();
    }

    private static Point at(double voltageV, double currentA) {
        return new Point(voltageV, currentA, null, null, null);
    }
}
