package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.berrywatt.server.reading.ReadingBench.MICROAMPS;
import static org.berrywatt.server.reading.ReadingBench.confirmed;

import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class RefusedReadingsTest {

    private final ReadingBench at;
    private final Readings readings;

    @Autowired
    RefusedReadingsTest(MockMvcTester server, JsonMapper json, Readings readings) {
        this.at = new ReadingBench(server, json);
        this.readings = readings;
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
        var problem = at.refused(at.light(new Typed(text, unit)), code);
        assertThat(problem.field()).isEqualTo("voltage");
        assertThat(problem.detail()).startsWith(sentence);
        assertThat(at.recorded(readings)).isEmpty();
    }

    @Test
    void acceptsAnUnusualNumberThatItsWriterConfirms() {
        var unusual = at.light(new Typed("1.2", "V"));
        var asked = at.refused(unusual, "quantity.unusual");
        assertThat(asked.limit()).isEqualTo("[-0.9, 0.9] V");
        assertThat(asked.detail()).endsWith("if the meter really shows it, confirm and send again.");
        assertThat(at.accepted(confirmed(unusual)).voltageV()).isEqualTo(1.2);
    }

    @Test
    void offersTheUnitThatWasProbablyMeant() {
        var asked = at.refused(at.light(new Typed("412", "V")), "quantity.impossible");
        assertThat(asked.value()).isEqualTo("412 V");
        assertThat(asked.choices()).containsExactly(new Typed("412", "mV"));
    }

    @Test
    void acceptsNoImpossibleNumberHoweverConfirmed() {
        at.refused(confirmed(at.light(new Typed("400", "V"))), "quantity.impossible");
    }

    @Test
    void refusesALightReadingWithoutAStation() {
        var problem = at.refused(request("light", null, MICROAMPS), "station.missing");
        assertThat(problem.detail()).isEqualTo("The light station is missing. Choose the station where the cell lies.");
        assertThat(problem.field()).isEqualTo("stationId");
    }

    @Test
    void refusesAStationOfAnotherDay() {
        var elsewhere = new Bench(at.team.server(), at.team.json()).station("Lamp");
        at.team.problem(at.put(request("light", elsewhere, MICROAMPS)), ProblemCode.STATION_MISSING);
    }

    @Test
    void refusesAKindOfReadingThatIsNone() {
        var problem = at.refused(request("smell", null, null), "choice.unknown");
        assertThat(problem.limit()).isEqualTo("dark, light, sweep, toggles");
    }

    @Test
    void refusesALightReadingWithoutItsCurrent() {
        assertThat(at.refused(request("light", at.station, null), "value.missing")
                        .field())
                .isEqualTo("current");
    }

    private ReadingRequest request(String kind, @Nullable UUID station, @Nullable Typed current) {
        return new ReadingRequest(
                at.cell,
                kind,
                station,
                new Typed("412", "mV"),
                current,
                null,
                null,
                null,
                false,
                null,
                null,
                Bench.NOTICED);
    }
}
