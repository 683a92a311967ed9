package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.berrywatt.server.reading.ReadingBench.READING;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.AtOnce;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class ReadingsTest {

    private final UUID id = UUID.randomUUID();
    private final ReadingBench at;
    private final Readings readings;

    @Autowired
    ReadingsTest(MockMvcTester server, JsonMapper json, Readings readings) {
        this.at = new ReadingBench(server, json);
        this.readings = readings;
    }

    @ParameterizedTest(name = "{0} beside {1} is {2} V, known to {3} V")
    @CsvSource({"60 mV, V, 0.06, 0.001", "'0,06', V, 0.06, 0.01", "60.0, mV, 0.06, 0.0001", "-12, mV, -0.012, 0.001"})
    void keepsWhatTheMeterShowedWithTheResolutionOfItsLastDigit(String text, String unit, double volt, double step) {
        var answer = at.accepted(at.light(new Typed(text, unit)));
        assertThat(answer.voltageV()).isCloseTo(volt, within(1e-15));
        assertThat(answer.voltage()).extracting(Typed::text).isEqualTo(text);
        var recorded = at.recorded(readings).get(0);
        assertThat(recorded.voltage()).isEqualTo(new Measured(volt, step));
        assertThat(recorded.current()).isEqualTo(new Measured(40e-6, 1e-6));
    }

    @Test
    void acceptsAReadingOnceHoweverOftenItIsSent() {
        var first = at.accepted(at.light("412"), id);
        assertThat(at.accepted(at.light("412"), id)).isEqualTo(first);
        assertThat(at.recorded(readings)).hasSize(1);
    }

    @Test
    void acceptsAReadingOnceWhenTwoCopiesArriveAtTheSameMoment() {
        var request = at.light("412");
        assertThat(AtOnce.statuses(
                        List.of(() -> at.team.put(request, READING, id), () -> at.team.put(request, READING, id))))
                .containsExactly(200, 200);
        assertThat(at.recorded(readings)).hasSize(1);
    }

    @Test
    void refusesAnotherReadingUnderTheSameId() {
        at.accepted(at.light("412"), id);
        var other = at.team.put(at.light("413"), READING, id);
        assertThat(other).hasStatus(409);
        at.team.problem(other, ProblemCode.ID_REUSED);
    }

    @Test
    void acceptsALightReadingBeforeTheStationsLightIsRead() {
        assertThat(at.put(at.light("412"))).hasStatusOk();
    }

    @Test
    void takesACurrentOfNothingForTooSmallToBeShown() {
        // a display of 0.0 µA shows less than one step of its last digit, which is not zero
        var request = Bench.lightRequest(at.cell, at.station, new Typed("12", "mV"), new Typed("0.0", "uA"));
        assertThat(at.accepted(request).currentA()).isZero();
        assertThat(at.recorded(readings).get(0).current()).isEqualTo(new Measured(0, 1e-7));
    }

    @Test
    void takesNothingFromATeamNorTheTeacherOnceTheDayIsClosedButAnswersWhatItTookBefore() {
        var first = at.accepted(at.light("412"), id);
        at.bench.setEntry(false);
        assertThat(at.accepted(at.light("412"), id)).isEqualTo(first);
        for (var caller : List.of(at.team, at.teacher)) {
            var late = caller.put(at.light(new Typed("413", "mV")), READING, UUID.randomUUID());
            assertThat(late).hasStatus(409);
            assertThat(caller.problem(late, ProblemCode.LABDAY_CLOSED).detail())
                    .isEqualTo("This lab day is closed, so nothing more can be entered."
                            + " Ask the teacher to open it again.");
        }
        at.bench.setEntry(true);
        assertThat(at.put(at.light("413"))).hasStatusOk();
    }
}
