package org.berrywatt.server.cell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

@ServerTest
class RefusedCellsTest {

    private static final String CELL = "/api/cells/{id}";
    private final UUID id = UUID.randomUUID();
    private final CellBench at;

    @Autowired
    RefusedCellsTest(MockMvcTester server, JsonMapper json) {
        this.at = new CellBench(server, json);
    }

    @ParameterizedTest(name = "{0} typed as {1} {2} is refused with {3}: {4}")
    @CsvSource({
        "bakeTemperature, 45o, degC, quantity.notANumber, “45o” is not a number.",
        "bakeTemperature, 4500, degC, quantity.impossible, “4500 °C” is not possible here; it must lie in [0 1000] °C.",
        "bakeTemperature, 450 V, degC, quantity.wrongUnit, “V” has a unit of another kind.",
        "bakeTime, 30 fortnights, min, quantity.unknownUnit, The unit in “fortnights” is not known here.",
        "dyeSource, cobalt, , choice.unknown, “cobalt” is not one of the choices.",
        "colour, red, , choice.unknown, “colour” is not one of the choices.",
    })
    void refusesARecipeThatCannotBe(
            String parameter, String text, @Nullable String unit, String code, String sentence) {
        var request = at.request("C1", List.of(new BuildValue(parameter, text, unit)), null);
        var refused = at.team.put(request, CELL, id);
        assertThat(refused).hasStatus(422);
        var problem = at.team.problem(refused, code);
        assertThat(problem.field()).startsWith("recipe[0].");
        assertThat(problem.detail().replace(",", "")).startsWith(sentence);
        assertThat(at.team.get(CELL, id)).hasStatus(404);
    }

    @ParameterizedTest(name = "a temperature of {0} is refused: {1} in {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "-300 degC | -300 °C | [0, 1000] °C",
                "4500 degC | 4500 °C | [0, 1000] °C",
                "1e9 degC | 1000000000 °C | [0, 1000] °C",
                "5000 K | 5000 K | [273.15, 1273.15] K",
            })
    void refusesATemperatureThatNoHeaterHas(String typed, String value, String limit) {
        var hot = List.of(new BuildValue("bakeTemperature", typed, null));
        var problem = at.team.problem(at.team.put(at.request("C1", hot, null), CELL, id), "quantity.impossible");
        assertThat(problem.field()).isEqualTo("recipe[0].text");
        assertThat(problem.value()).isEqualTo(value);
        assertThat(problem.limit()).isEqualTo(limit);
        assertThat(problem.detail()).contains(value, limit);
        assertThat(problem.wayOut()).isNotBlank();
    }

    @ParameterizedTest(name = "{0} is refused with {1}")
    @CsvSource({"'a\u202eb', text.unfit", "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx, text.tooLong"
    })
    void refusesWordsThatAreTooManyOrUnfit(String words, String code) {
        var recipe = List.of(new BuildValue("seal", "other", null, words));
        var problem = at.team.problem(at.team.put(at.request("C1", recipe, null), CELL, id), code);
        assertThat(problem.field()).isEqualTo("recipe[0].words");
    }

    @Test
    void refusesAParameterNamedTwice() {
        var twice = List.of(new BuildValue("bakeTime", "30", "min"), new BuildValue("bakeTime", "40", "min"));
        var problem = at.team.problem(at.team.put(at.request("C1", twice, null), CELL, id), ProblemCode.CHOICE_UNKNOWN);
        assertThat(problem.field()).isEqualTo("recipe[1].parameter");
    }

    @ParameterizedTest(name = "area typed as {0} {1} is refused with {2}")
    @CsvSource({
        "-2, cm2, quantity.impossible",
        "0, cm2, quantity.impossible",
        "15 x -15, mm, quantity.impossible",
        "15 x 15 x 15, mm, quantity.notANumber",
        "two, cm2, quantity.notANumber",
        "15 x 15, V, quantity.wrongUnit",
        "5 acre, cm2, quantity.unknownUnit"
    })
    void refusesAnAreaThatCannotBe(String text, String unit, String code) {
        var refused = at.team.put(at.request("C1", List.of(), new Typed(text, unit)), CELL, id);
        assertThat(refused).hasStatus(422);
        assertThat(at.team.problem(refused, code).field()).isEqualTo("area");
    }

    @ParameterizedTest(name = "without {0}")
    @CsvSource({"teamId, teamId", "label, label", "recipe, recipe", "noticedAt, noticedAt"})
    void refusesARequestWithoutWhatItNeeds(String missing, String field) {
        var body = at.team.json().valueToTree(at.request("C1"));
        ((ObjectNode) body).putNull(missing);
        assertThat(at.team
                        .problem(at.team.put(body.toString(), CELL, id), ProblemCode.VALUE_MISSING)
                        .field())
                .isEqualTo(field);
    }
}
