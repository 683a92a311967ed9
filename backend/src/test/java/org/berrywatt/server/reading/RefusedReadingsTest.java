package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class RefusedReadingsTest {

    private static final String READING = "/api/readings/{id}";
    private static final Typed MICROAMPS = new Typed("40", "uA");
    private final UUID id = UUID.randomUUID();
    private final Bench bench;
    private final Readings readings;
    private final Api team;
    private final UUID cell;
    private final UUID station;

    @Autowired
    RefusedReadingsTest(MockMvcTester server, JsonMapper json, Readings readings) {
        this.bench = new Bench(server, json);
        this.readings = readings;
        this.team = bench.team("Sloe");
        this.cell = bench.cell(team, "C1");
        this.station = bench.station("Lamp");
    }

    @ParameterizedTest(name = "voltage typed as {0} {1} is refused with {2}: {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "''       | mV | quantity.empty       | The number is missing.",
                "4l2      | mV | quantity.notANumber  | “4l2” is not a number.",
                "400      | V  | quantity.impossible  | “400 V” is not possible here; it must lie in [-3, 3] V."
                        + " Did you mean 400 mV?",
                "400 V    | mV | quantity.impossible  | “400 V” is not possible here; it must lie in [-3, 3] V."
                        + " Did you mean 400 mV?",
                "400 lx   | mV | quantity.wrongUnit   | “lx” has a unit of another kind. Choose one of: V, mV, µV.",
                "400      | lx | quantity.wrongUnit   | “lx” has a unit of another kind. Choose one of: V, mV, µV.",
                "4 volks  | mV | quantity.unknownUnit | The unit in “volks” is not known here. Choose one of: V, mV, µV.",
                "412      |    | quantity.unknownUnit | The unit in “412” is not known here. Choose one of: V, mV, µV.",
                "NaN      | mV | quantity.notANumber  | “NaN” is not a number.",
                "1e99     | mV | quantity.impossible  | “1",
                "2        | V  | quantity.unusual     | “2 V” is possible but unusual; most lie in [-0.9, 0.9] V."
                        + " Did you mean 2 mV?",
            })
    void refusesAVoltageThatCannotBe(String text, @Nullable String unit, String code, String sentence) {
        var refused = team.put(light(new Typed(text, unit), MICROAMPS), READING, id);
        assertThat(refused).hasStatus(422);
        var problem = team.problem(refused, code);
        assertThat(problem.field()).isEqualTo("voltage");
        assertThat(problem.detail()).startsWith(sentence);
        assertThat(readings.ofLabDay(bench.day.id())).isEmpty();
    }

    @Test
    void acceptsAnUnusualNumberThatItsWriterConfirms() {
        var asked = team.problem(
                team.put(light(new Typed("1.2", "V"), MICROAMPS), READING, id), ProblemCode.QUANTITY_UNUSUAL);
        assertThat(asked.limit()).isEqualTo("[-0.9, 0.9] V");
        assertThat(asked.detail()).endsWith("if the meter really shows it, confirm and send again.");
        var confirmed = new ReadingRequest(
                cell, "light", station, new Typed("1.2", "V"), MICROAMPS, null, true, null, Bench.NOTICED);
        assertThat(answer(team.put(confirmed, READING, id)).voltageV()).isEqualTo(1.2);
    }

    @Test
    void offersTheUnitThatWasProbablyMeant() {
        var asked = team.problem(
                team.put(light(new Typed("412", "V"), MICROAMPS), READING, id), ProblemCode.QUANTITY_IMPOSSIBLE);
        assertThat(asked.value()).isEqualTo("412 V");
        assertThat(asked.choices()).containsExactly(new Typed("412", "mV"));
    }

    @Test
    void acceptsNoImpossibleNumberHoweverConfirmed() {
        var confirmed = new ReadingRequest(
                cell, "light", station, new Typed("400", "V"), MICROAMPS, null, true, null, Bench.NOTICED);
        team.problem(team.put(confirmed, READING, id), ProblemCode.QUANTITY_IMPOSSIBLE);
    }

    @Test
    void refusesALightReadingWithoutAStation() {
        var request = new ReadingRequest(
                cell, "light", null, new Typed("412", "mV"), MICROAMPS, null, false, null, Bench.NOTICED);
        var problem = team.problem(team.put(request, READING, id), ProblemCode.STATION_MISSING);
        assertThat(problem.detail()).isEqualTo("The light station is missing. Choose the station where the cell lies.");
        assertThat(problem.field()).isEqualTo("stationId");
    }

    @Test
    void refusesAStationOfAnotherDay() {
        var elsewhere = new Bench(team.server(), team.json()).station("Lamp");
        var request = Bench.lightRequest(cell, elsewhere, new Typed("412", "mV"), MICROAMPS);
        team.problem(team.put(request, READING, id), ProblemCode.STATION_MISSING);
    }

    @Test
    void refusesAKindOfReadingThatIsNone() {
        var request = new ReadingRequest(cell, "smell", null, null, null, null, false, null, Bench.NOTICED);
        var problem = team.problem(team.put(request, READING, id), ProblemCode.CHOICE_UNKNOWN);
        assertThat(problem.limit()).isEqualTo("dark, light, sweep, toggles");
    }

    @Test
    void refusesALightReadingWithoutItsCurrent() {
        var request = new ReadingRequest(
                cell, "light", station, new Typed("412", "mV"), null, null, false, null, Bench.NOTICED);
        assertThat(team.problem(team.put(request, READING, id), ProblemCode.VALUE_MISSING)
                        .field())
                .isEqualTo("current");
    }

    private ReadingAnswer answer(MvcTestResult result) {
        return team.answer(result, ReadingAnswer.class);
    }

    private ReadingRequest light(Typed voltage, Typed current) {
        return Bench.lightRequest(cell, station, voltage, current);
    }
}
