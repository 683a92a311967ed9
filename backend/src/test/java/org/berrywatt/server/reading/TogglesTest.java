package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.ToggleAnswer;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class TogglesTest {

    private final ReadingBench at;

    @Autowired
    TogglesTest(MockMvcTester server, JsonMapper json) {
        at = new ReadingBench(server, json);
    }

    @Test
    void takesCoveredAndOpenInTurn() {
        var answer = at.accepted(toggles(currents("0", "45", "1", "46", "0", "44,5")));

        assertThat(answer.toggles())
                .extracting(ToggleAnswer::lit, ToggleAnswer::typed, ToggleAnswer::currentA, ToggleAnswer::voltageV)
                .startsWith(
                        tuple(false, new Typed("0", "uA"), 0.0, null),
                        tuple(true, new Typed("45", "uA"), 4.5e-5, null));
        assertThat(at.listed(at.team)).containsExactly(answer);
    }

    @Test
    void takesVoltagesAsWell() {
        var points = Stream.of("0", "300", "2", "301", "1", "299")
                .map(text -> new SweepPoint(null, new Typed(text, "mV"), null))
                .toList();
        var answer = at.accepted(toggles(points));
        assertThat(answer.toggles()).extracting(ToggleAnswer::voltageV).endsWith(0.001, 0.299);
    }

    @Test
    void refusesFewerThanThreeOpenings() {
        var problem = at.refused(toggles(currents("0", "45", "0", "45")), "toggles.incomplete");
        assertThat(problem.value()).isEqualTo("4");
        assertThat(problem.limit()).isEqualTo("6 to 20");
    }

    @Test
    void namesTheNumberThatIsMissing() {
        var problem = at.refused(toggles(currents("0", "45", "", "45", "0", "45")), "quantity.empty");
        assertThat(problem.field()).isEqualTo("points[2].current");
    }

    @Test
    void letsATeamAndATeacherMendTheNumbersAndKeepsTheEarlierOnes() {
        var wrong = at.accepted(toggles(currents("0", "45", "1", "460", "0", "44")));
        var mended = toggles(currents("0", "45", "1", "46", "0", "44"));
        var byTeam = at.accepted(ReadingBench.correcting(mended, wrong.id(), "Row 2 was 46"));
        var byTeacher = at.teacher.answer(
                at.teacher.put(
                        ReadingBench.correcting(mended, byTeam.id(), "Read off again together"),
                        ReadingBench.READING,
                        UUID.randomUUID()),
                ReadingAnswer.class);
        assertThat(at.listed(at.team))
                .extracting(ReadingAnswer::by, ReadingAnswer::reason, ReadingAnswer::replacedBy, ReadingAnswer::readAt)
                .containsExactly(
                        tuple("team", null, byTeam.id(), wrong.readAt()),
                        tuple("team", "Row 2 was 46", byTeacher.id(), wrong.readAt()),
                        tuple("teacher", "Read off again together", null, wrong.readAt()));
        assertThat(byTeacher.toggles()).extracting(ToggleAnswer::currentA).contains(4.6e-5);
    }

    @Test
    void asksWhyTheNumbersAreMended() {
        var wrong = at.accepted(toggles(currents("0", "45", "1", "460", "0", "44")));
        var mended = toggles(currents("0", "45", "1", "46", "0", "44"));
        assertThat(at.refused(ReadingBench.correcting(mended, wrong.id(), null), "value.missing")
                        .field())
                .isEqualTo("reason");
    }

    private ReadingRequest toggles(List<SweepPoint> points) {
        return new ReadingRequest(
                at.cell, "toggles", at.station, null, null, null, null, points, false, null, null, Bench.NOTICED);
    }

    private static List<SweepPoint> currents(String... texts) {
        return Stream.of(texts)
                .map(text -> new SweepPoint(null, null, new Typed(text, "uA")))
                .toList();
    }
}
