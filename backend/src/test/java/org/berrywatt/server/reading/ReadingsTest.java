package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.AtOnce;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class ReadingsTest {

    private static final String READING = "/api/readings/{id}";
    private static final Typed MICROAMPS = new Typed("40", "uA");
    private final UUID id = UUID.randomUUID();
    private final Bench bench;
    private final Readings readings;
    private final Api team;
    private final UUID cell;
    private final UUID station;

    @Autowired
    ReadingsTest(MockMvcTester server, JsonMapper json, Readings readings) {
        this.bench = new Bench(server, json);
        this.readings = readings;
        this.team = bench.team("Sloe");
        this.cell = bench.cell(team, "C1");
        this.station = bench.station("Lamp");
    }

    @ParameterizedTest(name = "{0} beside {1} is {2} V, known to {3} V")
    @CsvSource({"60 mV, V, 0.06, 0.001", "'0,06', V, 0.06, 0.01", "60.0, mV, 0.06, 0.0001", "-12, mV, -0.012, 0.001"})
    void keepsWhatTheMeterShowedWithTheResolutionOfItsLastDigit(String text, String unit, double volt, double step) {
        var answer = answer(team.put(light(new Typed(text, unit), MICROAMPS), READING, id));
        assertThat(answer.voltageV()).isCloseTo(volt, within(1e-15));
        assertThat(answer.voltage()).extracting(Typed::text).isEqualTo(text);
        assertThat(recorded().voltage()).isEqualTo(new Measured(volt, step));
        assertThat(recorded().current()).isEqualTo(new Measured(40e-6, 1e-6));
    }

    @Test
    void acceptsAReadingOnceHoweverOftenItIsSent() {
        var request = light(new Typed("412", "mV"), MICROAMPS);
        var first = answer(team.put(request, READING, id));
        assertThat(answer(team.put(request, READING, id))).isEqualTo(first);
        assertThat(readings.ofLabDay(bench.day.id())).hasSize(1);
    }

    @Test
    void acceptsAReadingOnceWhenTwoCopiesArriveAtTheSameMoment() {
        var request = light(new Typed("412", "mV"), MICROAMPS);
        assertThat(AtOnce.statuses(List.of(() -> team.put(request, READING, id), () -> team.put(request, READING, id))))
                .containsExactly(200, 200);
        assertThat(readings.ofLabDay(bench.day.id())).hasSize(1);
    }

    @Test
    void refusesAnotherReadingUnderTheSameId() {
        team.put(light(new Typed("412", "mV"), MICROAMPS), READING, id);
        var other = team.put(light(new Typed("413", "mV"), MICROAMPS), READING, id);
        assertThat(other).hasStatus(409);
        team.problem(other, ProblemCode.ID_REUSED);
    }

    @Test
    void acceptsALightReadingBeforeTheStationsLightIsRead() {
        assertThat(team.put(light(new Typed("412", "mV"), MICROAMPS), READING, id))
                .hasStatusOk();
    }

    @Test
    void acceptsADarkCheckWithoutAStation() {
        var dark = answer(team.put(Bench.darkRequest(cell, new Typed("3", "mV")), READING, id));
        assertThat(dark.kind()).isEqualTo("dark");
        assertThat(dark.stationId()).isNull();
    }

    @Test
    void keepsWhatACorrectionReplacesAndCountsWithTheCorrection() {
        var wrong = answer(team.put(light(new Typed("142", "mV"), MICROAMPS), READING, UUID.randomUUID()));
        var right = answer(team.put(correction(wrong.id(), "412"), READING, id));
        assertThat(team.answers(team.get("/api/cells/{id}/readings", cell), ReadingAnswer.class))
                .extracting(ReadingAnswer::id, ReadingAnswer::voltageV, ReadingAnswer::replacedBy)
                .containsExactly(tuple(wrong.id(), 0.142, right.id()), tuple(right.id(), 0.412, null));
        assertThat(readings.ofLabDay(bench.day.id()))
                .extracting(RecordedReading::id)
                .containsExactly(right.id());
    }

    @Test
    void answersTheReplacedReadingAgainWithTheNameOfItsCorrection() {
        var request = light(new Typed("142", "mV"), MICROAMPS);
        team.put(request, READING, id);
        var right = answer(team.put(correction(id, "412"), READING, UUID.randomUUID()));
        assertThat(answer(team.put(request, READING, id)).replacedBy()).isEqualTo(right.id());
    }

    @Test
    void letsAReadingBeCorrectedOnce() {
        team.put(light(new Typed("142", "mV"), MICROAMPS), READING, id);
        assertThat(AtOnce.statuses(List.of(
                        () -> team.put(correction(id, "412"), READING, UUID.randomUUID()),
                        () -> team.put(correction(id, "421"), READING, UUID.randomUUID()))))
                .containsExactlyInAnyOrder(200, 409);
        var late = team.put(correction(id, "422"), READING, UUID.randomUUID());
        team.problem(late, ProblemCode.REPLACED_ALREADY);
    }

    @Test
    void refusesToReplaceAReadingOfAnotherCell() {
        var other = bench.cell(team, "C2");
        var elsewhere = Bench.darkRequest(other, new Typed("3", "mV"));
        team.put(elsewhere, READING, id);
        team.problem(team.put(correction(id, "412"), READING, UUID.randomUUID()), ProblemCode.NOT_FOUND);
    }

    @Test
    void takesNothingFromATeamNorTheTeacherOnceTheDayIsClosedButAnswersWhatItTookBefore() {
        var request = light(new Typed("412", "mV"), MICROAMPS);
        var first = answer(team.put(request, READING, id));
        bench.setEntry(false);
        assertThat(answer(team.put(request, READING, id))).isEqualTo(first);
        for (var caller : List.of(team, bench.teacher)) {
            var late = caller.put(light(new Typed("413", "mV"), MICROAMPS), READING, UUID.randomUUID());
            assertThat(late).hasStatus(409);
            assertThat(caller.problem(late, ProblemCode.LABDAY_CLOSED).detail())
                    .isEqualTo("This lab day is closed, so nothing more can be entered."
                            + " Ask the teacher to open it again.");
        }
        bench.setEntry(true);
        assertThat(team.put(light(new Typed("413", "mV"), MICROAMPS), READING, UUID.randomUUID()))
                .hasStatusOk();
    }

    private RecordedReading recorded() {
        return readings.ofLabDay(bench.day.id()).get(0);
    }

    private ReadingAnswer answer(MvcTestResult result) {
        return team.answer(result, ReadingAnswer.class);
    }

    private ReadingRequest light(Typed voltage, Typed current) {
        return Bench.lightRequest(cell, station, voltage, current);
    }

    private ReadingRequest correction(UUID replaces, String millivolt) {
        return new ReadingRequest(
                cell, "light", station, new Typed(millivolt, "mV"), MICROAMPS, null, false, replaces, Bench.NOTICED);
    }
}
