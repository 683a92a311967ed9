package org.berrywatt.server.calculator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.StreamSupport;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.platform.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class NormalisationCalculationTest {

    private static final Map<String, Object> SUN =
            Map.of("source", "sun", "irradianceWm2", 1000, "instrument", "referenceCell");

    private final Calculator calculator;
    private final Texts texts;

    @Autowired
    NormalisationCalculationTest(MockMvcTester server, JsonMapper json, Texts texts) {
        calculator = new Calculator(server, json);
        this.texts = texts;
    }

    /** A source of 0.4 V and 1 mA without a bend, read point by point. */
    private static Map<String, Object> straightCell() {
        var rows = DoubleStream.of(0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1)
                .mapToObj(part -> Map.of("voltageV", 0.4 * part, "currentA", 1e-3 * (1 - part)))
                .toList();
        return new HashMap<>(Map.of("points", rows, "areaCm2", 1, "light", SUN));
    }

    private static Map<String, Object> spot() {
        return new HashMap<>(
                Map.of("voltageV", 0.412, "currentA", 640e-6, "darkCurrentA", 0, "areaCm2", 4, "light", SUN));
    }

    /**
     * Maximum power theorem: a straight source gives at most a quarter of Voc Isc, 0.1 mW, and over 1 cm² 1 W/m². In sunlight
     * read by silicon the mismatch is 1 (IEC 60904-7), so that 1000 W/m² is the standard's reference light itself.
     */
    @Test
    void findsTheQuarterPowerOfAStraightCell() {
        var answer = calculator.answer("normalisation", straightCell());
        assertThat(value(answer, "effectiveIrradianceWm2")).isCloseTo(1000, within(1e-9));
        assertThat(value(answer, "currentDensityAm2")).isCloseTo(10, within(0.02));
        assertThat(value(answer, "openCircuitVoltageV")).isCloseTo(0.4, within(1e-3));
        assertThat(value(answer, "fillFactor")).isCloseTo(0.25, within(2e-3));
        assertThat(value(answer, "powerDensityWm2")).isCloseTo(1, within(0.01));
        assertThat(value(answer, "powerAtReferenceAreaW")).isCloseTo(1e-4, within(1e-6));
        assertThat(value(answer, "efficiencyAsMeasured")).isCloseTo(1e-3, within(1e-5));
    }

    /** ASTM G173-03 with CIE V(λ): 109494.88 lx are 1000.37 W/m² of the reference sunlight (trapezoids, mpmath). */
    @Test
    void takesTheSameSunlightInLux() {
        var request = straightCell();
        request.put("light", Map.of("source", "sun", "illuminanceLx", 109_494.88, "instrument", "luxMeter"));
        assertThat(value(calculator.answer("normalisation", request), "effectiveIrradianceWm2"))
                .isCloseTo(1000.37, within(0.05));
    }

    /** IEC 60904-10: current follows light, so half the reference light asks for half the current. */
    @Test
    void bringsTheCurrentToTheReferenceLightInProportion() {
        var request = spot();
        var full = value(calculator.answer("normalisation", request), "currentDensityAm2");
        request.put("referenceIrradianceWm2", 500);
        assertThat(value(calculator.answer("normalisation", request), "currentDensityAm2"))
                .isCloseTo(full / 2, within(1e-9));
    }

    /** Without a sweep the fill factor lies between a straight line's quarter and Green's for an ideal diode (0.78 at 0.412 V). */
    @Test
    void neverReachesBeyondTheFillFactorsThatCellsHave() {
        var fillFactor = calculator.answer("normalisation", spot()).get("fillFactor");
        assertThat(fillFactor.get("low").asDouble()).isGreaterThanOrEqualTo(0.25);
        assertThat(fillFactor.get("high").asDouble()).isLessThanOrEqualTo(0.785);
    }

    @Test
    void explainsTheWholeUncertaintyStepByStep() {
        var answer = calculator.answer("normalisation", spot());
        assertThat(StreamSupport.stream(answer.get("budget").spliterator(), false)
                        .mapToDouble(line -> line.get("share").asDouble())
                        .sum())
                .isCloseTo(1, within(1e-9));
        assertThat(answer.get("steps")).hasSizeGreaterThan(4).allSatisfy(step -> {
            assertThat(texts.has(step.get("key").asString())).isTrue();
            assertThat(step.get("formula").asString()).contains("=");
            assertThat(step.get("substituted").asString()).containsPattern("\\d");
        });
    }

    @ParameterizedTest
    @CsvSource({"1000, note.noSweep", "700, note.scaled", "300, note.scaledFar"})
    void warnsOfWhatAReaderShouldKnow(double referenceWm2, String note) {
        var request = spot();
        request.put("referenceIrradianceWm2", referenceWm2);
        assertThat(notes(request).get(0)).isEqualTo(note);
    }

    @Test
    void saysThatTheLightIsOldAskewAndTheDarkNotRead() {
        var request = spot();
        request.put("light", Map.of("source", "window", "illuminanceLx", 12_000, "angleDeg", 70));
        request.put("lightAgeMinutes", 90);
        request.remove("darkCurrentA");
        assertThat(notes(request)).contains("note.stationStale", "note.lightAskew", "note.darkNotRead");
        assertThat(notes(request)).allMatch(texts::has);
    }

    @Test
    void growsLessSureAsTheLightReadingAges() {
        var request = spot();
        request.put("light", Map.of("source", "window", "illuminanceLx", 12_000));
        var fresh = width(calculator.answer("normalisation", request));
        request.put("lightAgeMinutes", 240);
        var old = width(calculator.answer("normalisation", request));
        request.put("lightUncertaintyPercent", 0);
        assertThat(old).isGreaterThan(1.05 * fresh);
        assertThat(width(calculator.answer("normalisation", request))).isLessThan(old);
    }

    @Test
    void refusesACellThatGivesNoMoreUnderLightThanInTheDark() {
        var request = spot();
        request.put("darkCurrentA", 2e-3);
        var problem = calculator.problem("normalisation", request, "calculation.noPhotocurrent");
        assertThat(problem.field()).isEqualTo("darkCurrentA");
        assertThat(problem.detail()).contains("still a battery");
    }

    @Test
    void refusesTwoMeasurementsAtOnce() {
        var request = straightCell();
        request.put("voltageV", 0.4);
        assertThat(calculator
                        .problem("normalisation", request, "calculation.either")
                        .field())
                .isEqualTo("points");
    }

    @Test
    void namesTheFieldWithinTheLight() {
        var request = spot();
        request.put("light", Map.of("source", "candle", "illuminanceLx", 100));
        assertThat(calculator
                        .problem("normalisation", request, "choice.unknown")
                        .field())
                .isEqualTo("light.source");
        request.remove("light");
        assertThat(calculator.problem("normalisation", request, "value.missing").field())
                .isEqualTo("light");
    }

    @Test
    void refusesARowThatOhmsLawCannotFill() {
        var request = straightCell();
        request.put(
                "points",
                List.of(
                        Map.of("voltageV", 0.4, "loadOhm", 1e5),
                        Map.of("voltageV", 0.3, "loadOhm", 0),
                        Map.of("voltageV", 0.2, "loadOhm", 500),
                        Map.of("voltageV", 0.1, "loadOhm", 100),
                        Map.of("currentA", 1e-3, "loadOhm", 0)));
        assertThat(calculator
                        .problem("normalisation", request, "sweep.rowIncomplete")
                        .field())
                .isEqualTo("points[1]");
    }

    @Test
    void answersTheSameNumbersAlikeEachTime() {
        assertThat(calculator.answer("normalisation", spot())).isEqualTo(calculator.answer("normalisation", spot()));
    }

    private List<String> notes(Map<String, Object> request) {
        return StreamSupport.stream(
                        calculator.answer("normalisation", request).get("notes").spliterator(), false)
                .map(note -> note.get("key").asString())
                .toList();
    }

    private static double value(JsonNode answer, String figure) {
        return answer.get(figure).get("value").asDouble();
    }

    private static double width(JsonNode answer) {
        var power = answer.get("powerDensityWm2");
        return power.get("high").asDouble() - power.get("low").asDouble();
    }
}
