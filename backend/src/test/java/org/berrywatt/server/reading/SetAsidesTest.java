package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.berrywatt.server.reading.ReadingBench.correcting;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.FinalRequest;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.LabDayAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SetAsideAnswer;
import org.berrywatt.contract.SetAsideRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.AtOnce;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class SetAsidesTest {

    private static final String SET_ASIDE = "/api/set-asides/{id}";
    private static final String WHY = "The clip sat on bare glass";
    private final ReadingBench at;
    private final UUID first = UUID.randomUUID();
    private final UUID second = UUID.randomUUID();

    @Autowired
    SetAsidesTest(MockMvcTester server, JsonMapper json) {
        at = new ReadingBench(server, json);
    }

    @BeforeEach
    void readTheCellTwice() {
        var light = new IrradianceRequest(at.station, new Typed("12000", "lx"), null, Bench.NOTICED);
        assertThat(at.teacher.put(light, "/api/irradiances/{id}", UUID.randomUUID()))
                .hasStatusOk();
        read(UUID.randomUUID(), Bench.darkRequest(at.cell, new Typed("1", "mV")));
        read(first, lit("310"));
        read(second, lit("405"));
    }

    @Test
    void changesTheLeaderboardAndReturnsItToTheBit() {
        var before = leaderboard();
        put(second, WHY);
        var without = leaderboard();
        put(second, null);
        assertThat(without).isNotEqualTo(before);
        assertThat(leaderboard()).isEqualTo(before);
    }

    @Test
    void leavesTheResultThatTheReadingsLeftGaveBefore() {
        var before = result();
        var third = UUID.randomUUID();
        read(third, lit("480"));
        assertThat(result()).isNotEqualTo(before);
        put(third, WHY);
        assertThat(result()).isEqualTo(before);
    }

    @Test
    void tellsTheTeamWhyAndKeepsTheWholeStory() {
        put(second, WHY);
        put(second, null);
        put(second, "Two numbers swapped");
        assertThat(at.listed(at.team))
                .filteredOn(reading -> reading.id().equals(second))
                .singleElement()
                .satisfies(reading -> assertThat(reading.setAside())
                        .extracting(SetAsideAnswer::reason)
                        .containsExactly(WHY, null, "Two numbers swapped"))
                .satisfies(reading -> assertThat(reading.setAside())
                        .extracting(SetAsideAnswer::teacher)
                        .containsOnly("Ms Alder"));
    }

    @Test
    void happensOnceHoweverOftenItIsSent() {
        var id = UUID.randomUUID();
        var request = new SetAsideRequest(second, WHY);
        assertThat(AtOnce.statuses(List.of(
                        () -> at.teacher.put(request, SET_ASIDE, id), () -> at.teacher.put(request, SET_ASIDE, id))))
                .containsExactly(200, 200);
        put(second, null);
        assertThat(at.teacher.put(request, SET_ASIDE, id)).hasStatusOk();
        assertThat(lastOf(second).reason()).isNull();
        at.teacher.problem(at.teacher.put(new SetAsideRequest(second, "Other"), SET_ASIDE, id), ProblemCode.ID_REUSED);
    }

    @Test
    void isForTeachersOnly() {
        var request = new SetAsideRequest(second, WHY);
        assertThat(at.team.put(request, SET_ASIDE, UUID.randomUUID())).hasStatus(403);
        assertThat(at.team.asNobody().put(request, SET_ASIDE, UUID.randomUUID()))
                .hasStatus(401);
    }

    @Test
    void asksForAReasonThatCanBeRead() {
        assertThat(problem(second, " ", ProblemCode.TEXT_EMPTY)).isEqualTo("reason");
        assertThat(problem(second, "x".repeat(121), ProblemCode.TEXT_TOO_LONG)).isEqualTo("reason");
        assertThat(problem(UUID.randomUUID(), WHY, ProblemCode.NOT_FOUND)).isEqualTo("readingId");
    }

    @Test
    void refusesAReadingThatACorrectionHasReplaced() {
        assertThat(at.team.put(correction(second, "404"), "/api/readings/{id}", UUID.randomUUID()))
                .hasStatusOk();
        assertThat(problem(second, WHY, ProblemCode.REPLACED_ALREADY)).isEqualTo("readingId");
    }

    @Test
    void isPossibleWhileTheDayIsClosedAsIsATeachersCorrection() {
        at.bench.setEntry(false);
        put(first, WHY);
        assertThat(at.teacher.put(correction(second, "404"), "/api/readings/{id}", UUID.randomUUID()))
                .hasStatusOk();
        var late = at.team.put(correction(second, "403"), "/api/readings/{id}", UUID.randomUUID());
        at.team.problem(late, ProblemCode.LABDAY_CLOSED);
    }

    @Test
    void moveNoResultOnceItIsFinalUntilThatIsTakenBackWithAReason() {
        setFinal(new FinalRequest(true, null));
        var before = leaderboard();
        problem(second, WHY, ProblemCode.LABDAY_FINAL);
        var correction = at.teacher.put(correction(second, "404"), "/api/readings/{id}", UUID.randomUUID());
        at.teacher.problem(correction, ProblemCode.LABDAY_FINAL);
        assertThat(leaderboard()).isEqualTo(before);

        var unfounded = at.teacher.put(new FinalRequest(false, null), "/api/labdays/{id}/final", at.bench.day.id());
        assertThat(at.teacher.problem(unfounded, ProblemCode.VALUE_MISSING).field())
                .isEqualTo("reason");
        setFinal(new FinalRequest(false, "Newts read the wrong meter"));
        put(second, WHY);
    }

    private void setFinal(FinalRequest request) {
        var answer = at.teacher.put(request, "/api/labdays/{id}/final", at.bench.day.id());
        assertThat(at.teacher.answer(answer, LabDayAnswer.class).entryOpen()).isFalse();
    }

    private void put(UUID reading, @Nullable String reason) {
        assertThat(at.teacher.put(new SetAsideRequest(reading, reason), SET_ASIDE, UUID.randomUUID()))
                .hasStatusOk();
    }

    private @Nullable String problem(UUID reading, String reason, ProblemCode code) {
        var refused = at.teacher.put(new SetAsideRequest(reading, reason), SET_ASIDE, UUID.randomUUID());
        return at.teacher.problem(refused, code).field();
    }

    private SetAsideAnswer lastOf(UUID reading) {
        var story = at.listed(at.teacher).stream()
                .filter(it -> it.id().equals(reading))
                .findFirst()
                .orElseThrow()
                .setAside();
        return story.get(story.size() - 1);
    }

    private String leaderboard() {
        return teams(at.teacher.get("/api/labdays/{id}/leaderboard", at.bench.day.id()));
    }

    /** Without the number of the live message, which grows with every change. */
    private String teams(MvcTestResult answer) {
        return at.teacher
                .json()
                .readTree(answer.getResponse().getContentAsByteArray())
                .at("/body/teams")
                .toString();
    }

    private String result() {
        var answer = at.teacher.get("/api/cells/{id}/result", at.cell);
        return new String(answer.getResponse().getContentAsByteArray(), StandardCharsets.UTF_8);
    }

    private void read(UUID id, ReadingRequest request) {
        assertThat(at.team.put(request, "/api/readings/{id}", id)).hasStatusOk();
    }

    private ReadingRequest lit(String millivolt) {
        return Bench.lightRequest(at.cell, at.station, new Typed(millivolt, "mV"), new Typed("200", "uA"));
    }

    private ReadingRequest correction(UUID replaces, String millivolt) {
        return correcting(lit(millivolt), replaces, null);
    }
}
