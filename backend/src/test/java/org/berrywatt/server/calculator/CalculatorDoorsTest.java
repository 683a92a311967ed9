package org.berrywatt.server.calculator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** What all doors of the calculator have in common: nobody is asked who they are, and nothing breaks them. */
@ServerTest
class CalculatorDoorsTest {

    private static final Map<String, String> GOOD = Map.of(
            "findings",
            """
            {"outcome": "power", "parameters": ["dye", "bake"], "block": "team", "day": "day", "seed": 2, "rows": [
             {"team": "Larch", "day": "1", "dye": "elder", "bake": 450, "power": 3.1},
             {"team": "Larch", "day": "1", "dye": "sloe", "bake": 400, "power": 1.2},
             {"team": "Spruce", "day": "1", "dye": "elder", "bake": 400, "power": 2.2},
             {"team": "Spruce", "day": "1", "dye": "sloe", "bake": 450, "power": "failed"},
             {"team": "Yew", "day": "2", "dye": "sloe", "bake": 450, "power": 1.9},
             {"team": "Yew", "day": "2", "dye": "elder", "bake": null, "power": null}]}
            """,
            "yield",
            """
            {"rows": [{"value": 350, "made": 6, "worked": 1}, {"value": 450, "made": 6, "worked": 5},
             {"value": 500, "made": 5, "worked": 4}]}
            """,
            "diode",
            """
            {"photocurrentA": 1e-3, "saturationCurrentA": 1e-7, "idealityFactor": 2, "seriesResistanceOhm": 50,
             "shuntResistanceOhm": 5000, "temperatureC": 25, "cellsInSeries": 1, "voltagesV": [-0.1, 0, 0.1, 0.3, 0.6]}
            """,
            "curve",
            """
            {"points": [{"voltageV": 0, "currentA": 1e-3}, {"voltageV": 0.1, "currentA": 9e-4},
             {"voltageV": 0.2, "currentA": 8e-4}, {"loadOhm": 500, "currentA": 6e-4},
             {"voltageV": 0.4, "loadOhm": 1000, "voltageUncertaintyV": 1e-3, "currentUncertaintyA": 1e-6},
             {"voltageV": 0.5, "currentA": 0}],
             "areaCm2": 4, "irradianceWm2": 800, "temperatureC": 25, "cellsInSeries": 1}
            """,
            "light",
            """
            {"source": "coolLed", "illuminanceLx": 2000, "blackBodyK": 2856, "distanceM": 2, "readAtM": 1,
             "lampDiameterM": 0.05, "angleDeg": 30, "dye": "anthocyanin", "instrument": "luxMeter", "spectrum": "400 1"}
            """,
            "normalisation",
            """
            {"voltageV": 0.412, "voltageResolutionV": 1e-3, "currentA": 6.4e-4, "currentResolutionA": 1e-6,
             "darkCurrentA": 1e-6, "darkCurrentResolutionA": 1e-7, "areaCm2": 4, "areaUncertaintyCm2": 0.1,
             "light": {"source": "coolLed", "illuminanceLx": 2000, "angleDeg": 30, "dye": "anthocyanin",
             "instrument": "luxMeter"}, "lightResolution": 1, "lightAgeMinutes": 5, "temperatureC": 30,
             "temperatureUncertaintyC": 2, "currentPerKelvin": 0.001, "voltagePerKelvin": -0.004,
             "referenceIrradianceWm2": 100, "referenceAreaCm2": 1, "seed": 3}
            """,
            "normalisation of a sweep",
            """
            {"points": [{"loadOhm": 10, "voltageV": 0.0063, "voltageResolutionV": 1e-4},
             {"loadOhm": 220, "voltageV": 0.128}, {"loadOhm": 680, "voltageV": 0.276},
             {"loadOhm": 1000, "currentA": 3.11e-4, "currentResolutionA": 1e-6}, {"voltageV": 0.36, "currentA": 1.6e-4},
             {"loadOhm": 100000, "voltageV": 0.41}], "areaCm2": 4,
             "light": {"source": "sun", "irradianceWm2": 500, "instrument": "referenceCell"},
             "lightUncertaintyPercent": 2}
            """,
            "uncertainty",
            """
            {"model": "efficiency", "trials": 1000, "seed": 4, "inputs": [
             {"name": "P", "value": 1e-4, "u": 2e-6, "shape": "normal", "dof": 9},
             {"name": "A", "value": 4e-4, "u": 1e-5, "shape": "student", "dof": 4},
             {"name": "G", "value": 100, "u": 5, "shape": "rectangular"}]}
            """,
            "leaderboard",
            """
            {"rule": {"metric": "efficiencyAsMeasured", "count": "bestVerified", "cellsPerTeam": 2, "entryOpen": true},
             "trials": 1000, "seed": 5, "cells": [
             {"team": "Larch", "cell": "a", "state": "counts", "value": 2, "standardUncertainty": 0.1,
             "shared": [{"cause": "meter", "standardUncertainty": 0.2}], "station": "window", "readAgain": [2.1]},
             {"team": "Spruce", "cell": "b", "value": 1.9, "low": 1.5, "high": 2.2, "station": "window"},
             {"team": "Spruce", "cell": "c", "state": "failed"}]}
            """);

    private final MockMvcTester server;
    private final Calculator calculator;

    @Autowired
    CalculatorDoorsTest(MockMvcTester server, JsonMapper json) {
        this.server = server;
        calculator = new Calculator(server, json);
    }

    private static String good(String request) {
        return Objects.requireNonNull(GOOD.get(request));
    }

    static List<String> requests() {
        return List.copyOf(GOOD.keySet());
    }

    static List<String> doors() {
        return GOOD.keySet().stream().map(CalculatorDoorsTest::door).distinct().toList();
    }

    private static String door(String request) {
        return request.replaceFirst(" .*", "");
    }

    @ParameterizedTest
    @MethodSource("requests")
    void answersAnybodyWithoutAPassOrAToken(String request) {
        assertThat(calculator.post(door(request), good(request))).hasStatusOk();
    }

    @ParameterizedTest
    @MethodSource("requests")
    void staysOnItsFeetWhateverIsSent(String request) {
        var junk = new Junk(2026);
        for (int i = 0; i < 800; i++) {
            var body = junk.spoil(good(request));
            var result = calculator.postFrom("10.1." + request.length() + "." + i / 100, door(request), body);
            assertThat(result.getResponse().getStatus()).as(body).isIn(200, 400, 422);
            if (result.getResponse().getStatus() == 200) {
                assertThat(withoutNames(Calculator.text(result))).as(body).doesNotContain("NaN", "Infinity");
            }
        }
    }

    /** What somebody named is theirs: a team may be called NaN. */
    private static String withoutNames(String answer) {
        return answer.replaceAll(
                "\"(input|team|bestVerifiedCell|parameter|level|[a-zA-Z]+Level|[a-zA-Z]+Parameter|first|second)\":\"[^\"]*\"",
                "");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "null", "[]", "3", "{", "{\"points\": 3}", "{\"voltagesV\": [{}]}", "\"curve\""})
    void refusesWhatIsNoRequest(String body) {
        assertThat(doors())
                .allSatisfy(door -> assertThat(calculator.post(door, body)).hasStatus4xxClientError());
    }

    @ParameterizedTest
    @MethodSource("doors")
    void refusesAnEmptyRequestByWhatIsMissing(String door) {
        var problem = calculator.problem(door, "{}", door.equals("light") ? "calculation.either" : "value.missing");
        assertThat(problem.field()).isNotNull();
    }

    @Test
    void refusesABodyOver64Kilobytes() {
        var rows = IntStream.range(0, 3000)
                .mapToObj(i -> "{\"voltageV\":0.1,\"currentA\":1e-3}")
                .collect(Collectors.joining(",", "{\"points\":[", "]}"));
        assertThat(calculator.problem("curve", rows, "request.tooLarge").status())
                .isEqualTo(413);
    }

    @Test
    void refusesOtherMethodsAndMediaTypes() {
        assertThat(server.get().uri("/api/calculations/diode")).hasStatus(405);
        assertThat(server.post()
                        .uri("/api/calculations/diode")
                        .contentType(MediaType.TEXT_PLAIN)
                        .content(good("diode")))
                .hasStatus(415);
        assertThat(server.post().uri("/api/calculations/yesterday").contentType(MediaType.APPLICATION_JSON))
                .hasStatus(404);
    }

    @Test
    void slowsDownAnAddressThatAsksWithoutEndAndNobodyElse() {
        // refused for what they lack, and yet as dear as what they ask for
        var dear = "{\"trials\": 200000, \"inputs\": [{},{},{},{},{},{},{},{},{},{},{},{}]}";
        var refused = IntStream.range(0, 5000)
                .mapToObj(i -> calculator.postFrom("10.2.0.1", "uncertainty", dear))
                .filter(result -> result.getResponse().getStatus() == 429)
                .findFirst()
                .orElseThrow();
        assertThat(Calculator.text(refused)).contains("calculation.tooMany");
        assertThat(Integer.parseInt(refused.getResponse().getHeader("Retry-After")))
                .isPositive();
        assertThat(calculator.postFrom("10.2.0.2", "light", good("light"))).hasStatusOk();
    }

    @Test
    void describesEveryDoorWithItsUnits() {
        assertThat(server.get().uri("/v3/api-docs"))
                .hasStatusOk()
                .bodyText()
                .contains(doors().stream()
                        .map(door -> "/api/calculations/" + door)
                        .toList())
                .contains("shortCircuitCurrentA", "effectiveIrradianceWm2", "saturationCurrentA", "powerDensityWm2");
    }
}
