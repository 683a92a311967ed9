package org.berrywatt.server.calculator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class LightCalculationTest {

    private final Calculator calculator;

    @Autowired
    LightCalculationTest(MockMvcTester server, JsonMapper json) {
        calculator = new Calculator(server, json);
    }

    @Test
    void knowsTheReferenceSunlightInLuxAndInWattsPerSquareMetre() {
        // ASTM G173-03 AM1.5 global: 1000.37 W/m² over its table, with CIE V(lambda) 109494.88 lx (trapezoids, mpmath)
        var answer = calculator.answer("light", Map.of("source", "sun", "illuminanceLx", 109_494.88));
        assertThat(answer.get("irradianceWm2").asDouble()).isCloseTo(1000.37, within(0.05));
        assertThat(answer.get("illuminanceLx").asDouble()).isCloseTo(109_494.88, within(1e-6));
        assertThat(answer.get("efficacyLmPerW").asDouble()).isCloseTo(109.45431, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"warmLed, 311.7896", "fluorescent, 336.72746", "A, 155.09616", "D65, 190.57107", "LED-V1, 235.57658"})
    void knowsTheEfficacyOfIlluminants(String lamp, double lumensPerWatt) {
        // CIE LED-B1, FL2, A, D65 and LED-V1 over their tables by 1 nm: reference table luminous_efficacy (mpmath, from
        // CIE data)
        var answer = calculator.answer("light", Map.of("source", lamp, "irradianceWm2", 3));
        assertThat(answer.get("efficacyLmPerW").asDouble()).isCloseTo(lumensPerWatt, within(1e-3));
        assertThat(answer.get("illuminanceLx").asDouble()).isCloseTo(3 * lumensPerWatt, within(1e-2));
    }

    @ParameterizedTest
    @ValueSource(strings = {"anthocyanin", "betalain", "chlorophyll", "undyed", "other"})
    void needsNoCorrectionUnderTheReferenceSunlight(String dye) {
        // IEC 60904-7: the mismatch is 1 when lamp and reference have the same spectrum
        for (var instrument : new String[] {"solarMeter", "referenceCell"}) {
            var answer = calculator.answer(
                    "light", Map.of("source", "sun", "irradianceWm2", 800, "dye", dye, "instrument", instrument));
            assertThat(answer.get("spectralMismatch").asDouble()).isCloseTo(1, within(1e-12));
            assertThat(answer.get("effectiveIrradianceWm2").asDouble()).isCloseTo(800, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"2856, 20.157342", "2700, 15.58216", "4000, 59.990328"})
    void knowsTheEfficacyOfBlackBodies(double kelvin, double lumensPerWatt) {
        // Planck's law over 300 to 2500 nm: reference table luminous_efficacy (mpmath)
        var answer =
                calculator.answer("light", Map.of("source", "blackBody", "blackBodyK", kelvin, "illuminanceLx", 1000));
        assertThat(answer.get("efficacyLmPerW").asDouble()).isCloseTo(lumensPerWatt, within(1e-4));
        assertThat(answer.get("irradianceWm2").asDouble()).isCloseTo(1000 / lumensPerWatt, within(1e-3));
    }

    @Test
    void takesASpectrumOfOnesOwn() {
        // monochromatic light of 555 nm has 683 lm/W (definition of the candela); a narrow peak comes close
        var answer = calculator.answer(
                "light",
                Map.of("source", "ownSpectrum", "spectrum", "400,0\n554,0\n555,1\n556,0\n700,0", "illuminanceLx", 683));
        assertThat(answer.get("efficacyLmPerW").asDouble()).isCloseTo(683, within(0.2));
        assertThat(answer.get("irradianceWm2").asDouble()).isCloseTo(1, within(1e-3));
    }

    @Test
    void refusesATableThatIsNoSpectrumByItsRow() {
        var problem = calculator.problem(
                "light",
                Map.of("source", "ownSpectrum", "spectrum", "400,1\n390,1", "illuminanceLx", 683),
                "spectrum.rising");
        assertThat(problem.detail()).contains("Row 2", "390", "(400, 20000] nm");
    }

    @Test
    void thinsOutWithTheSquareOfTheDistanceAndTheCosineOfTheAngle() {
        // inverse-square and cosine laws of photometry: twice as far a quarter, at 60° half
        var near = Map.<String, Object>of("source", "coolLed", "illuminanceLx", 2000);
        var moved = new HashMap<>(near);
        moved.putAll(Map.of("readAtM", 0.5, "distanceM", 1, "angleDeg", 60));
        assertThat(calculator.answer("light", moved).get("illuminanceLx").asDouble())
                .isCloseTo(250, within(1e-9));
        assertThat(calculator.answer("light", near).get("notes")).isEmpty();
    }

    @Test
    void saysThatLightFallsInAskewAndRefusesAPlaceTooNearTheLamp() {
        var request = new HashMap<String, Object>(Map.of("source", "coolLed", "illuminanceLx", 2000, "angleDeg", 75));
        assertThat(calculator
                        .answer("light", request)
                        .get("notes")
                        .get(0)
                        .get("key")
                        .asString())
                .isEqualTo("note.lightAskew");
        request.putAll(Map.of("distanceM", 0.2, "lampDiameterM", 0.05));
        var problem = calculator.problem("light", request, "calculation.tooNear");
        assertThat(problem.field()).isEqualTo("distanceM");
        assertThat(problem.limit()).isEqualTo("[0.25, ∞) m");
    }

    @Test
    void doublesEverythingButTheRatiosWithTheLight() {
        var single = calculator.answer("light", Map.of("source", "coolLed", "illuminanceLx", 2000));
        var twice = calculator.answer("light", Map.of("source", "coolLed", "illuminanceLx", 4000));
        for (var name : new String[] {"irradianceWm2", "illuminanceLx", "effectiveIrradianceWm2"}) {
            assertThat(twice.get(name).asDouble())
                    .isCloseTo(2 * single.get(name).asDouble(), within(1e-9));
        }
        assertThat(twice.get("spectralMismatch")).isEqualTo(single.get("spectralMismatch"));
    }

    @Test
    void saysHowSureEveryFigureIs() {
        var answer = calculator.answer("light", Map.of("source", "halogen", "illuminanceLx", 5000));
        for (var name : answer.get("uncertainties").propertyNames()) {
            var spread = answer.get("uncertainties").get(name);
            assertThat(spread.get("standardUncertainty").asDouble()).as(name).isPositive();
            assertThat(answer.get(name).asDouble()).as(name).isBetween(low(spread), high(spread));
        }
        assertThat(answer.get("uncertainties").size()).isEqualTo(5);
    }

    @Test
    void refusesAReadingInBothUnitsOrInNeither() {
        var request = new HashMap<String, Object>(Map.of("source", "sun"));
        assertThat(calculator.problem("light", request, "calculation.either").field())
                .isEqualTo("illuminanceLx");
        request.putAll(Map.of("illuminanceLx", 100, "irradianceWm2", 1));
        assertThat(calculator.problem("light", request, "calculation.either").limit())
                .isEqualTo("illuminanceLx, irradianceWm2");
    }

    @Test
    void refusesADarkReading() {
        var problem =
                calculator.problem("light", Map.of("source", "sun", "illuminanceLx", 0), "calculation.outOfRange");
        assertThat(problem.limit()).isEqualTo("[0.001, 1000000] lx");
    }

    @ParameterizedTest
    @CsvSource({"source, candle", "dye, ink", "instrument, eye"})
    void refusesAnUnknownChoiceAndNamesTheKnownOnes(String field, String value) {
        var request = new HashMap<String, Object>(Map.of("source", "sun", "irradianceWm2", 100));
        request.put(field, value);
        var problem = calculator.problem("light", request, "choice.unknown");
        assertThat(problem.field()).isEqualTo(field);
        assertThat(problem.limit()).contains(", ");
    }

    private static double low(JsonNode spread) {
        return spread.get("low").asDouble();
    }

    private static double high(JsonNode spread) {
        return spread.get("high").asDouble();
    }
}
