package org.berrywatt.server.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.LessonAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.TimerAnswer;
import org.berrywatt.contract.TimerExtensionRequest;
import org.berrywatt.contract.TimerRequest;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class TimersTest {

    private final Lesson lesson;
    private final Bench bench;
    private final Api sloe;
    private final Api elder;

    @Autowired
    TimersTest(Lesson lesson, MockMvcTester server, JsonMapper json) {
        this.lesson = lesson;
        bench = new Bench(server, json);
        sloe = bench.team("Sloe");
        elder = bench.team("Elder");
    }

    @Test
    void keepsATimerAsTheTimeOfItsEnd() {
        var timer = start("Bake", 1800, null, null);

        assertThat(timer.endsAt()).isEqualTo(timer.startedAt().plusSeconds(1800));
        assertThat(lesson.classTimers(bench.day.id(), Instant.now())).containsExactly(timer);
    }

    @Test
    void addsTimeToATimerOnceHoweverOftenItIsSent() {
        var timer = start("Bake", 1800, null, null);
        var id = UUID.randomUUID();

        extend(timer, id);
        var extended = extend(timer, id);

        assertThat(extended.endsAt()).isEqualTo(timer.endsAt().plus(Duration.ofMinutes(5)));
    }

    @Test
    void showsATimerTenMinutesBeyondItsEnd() {
        var timer = start("Bake", 60, null, null);

        assertThat(lesson.classTimers(bench.day.id(), timer.endsAt().plusSeconds(599)))
                .containsExactly(timer);
        assertThat(lesson.classTimers(bench.day.id(), timer.endsAt().plusSeconds(600)))
                .isEmpty();
    }

    @Test
    void stopsATimerForGood() {
        var timer = start("Bake", 1800, null, null);

        assertThat(bench.teacher.put("", "/api/timers/{id}/end", timer.id())).hasStatusOk();
        assertThat(bench.teacher.put("", "/api/timers/{id}/end", timer.id())).hasStatusOk();

        assertThat(lesson.classTimers(bench.day.id(), Instant.now())).isEmpty();
        bench.teacher.problem(
                bench.teacher.put(
                        new TimerExtensionRequest(5),
                        "/api/timers/{id}/extensions/{extensionId}",
                        timer.id(),
                        UUID.randomUUID()),
                ProblemCode.REPLACED_ALREADY);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 28801})
    void refusesATimerLongerThanADayOrNone(int durationS) {
        var problem = bench.teacher.problem(
                put(new TimerRequest(bench.day.id(), "Bake", durationS, null, null)), ProblemCode.QUANTITY_IMPOSSIBLE);
        assertThat(problem.limit()).isEqualTo("[1, 28800]");
    }

    @Test
    void showsATeamsTimerToThatTeamAndTheTeacherOnly() {
        var cell = bench.cell(sloe, "S1");
        var ofTeam = start("Your turn at the lamp", 300, Bench.teamId(elder), null);
        var ofCell = start("Dye", 600, null, cell);
        var ofAll = start("Break", 900, null, null);

        assertThat(timers(bench.teacher)).containsExactly(ofTeam, ofCell, ofAll);
        assertThat(timers(sloe)).containsExactly(ofCell, ofAll);
        assertThat(timers(elder)).containsExactly(ofTeam, ofAll);
        assertThat(lesson.classTimers(bench.day.id(), Instant.now())).containsExactly(ofAll);
        assertThat(ofCell.teamId()).isEqualTo(Bench.teamId(sloe));
    }

    @Test
    void refusesATimerForATeamThatIsNotOfTheDay() {
        var problem = bench.teacher.problem(
                put(new TimerRequest(bench.day.id(), "Dye", 60, UUID.randomUUID(), null)), ProblemCode.NOT_FOUND);
        assertThat(problem.field()).isEqualTo("teamId");
    }

    private TimerAnswer start(String words, int durationS, @Nullable UUID team, @Nullable UUID cell) {
        return bench.teacher.answer(
                put(new TimerRequest(bench.day.id(), words, durationS, team, cell)), TimerAnswer.class);
    }

    private TimerAnswer extend(TimerAnswer timer, UUID id) {
        return bench.teacher.answer(
                bench.teacher.put(
                        new TimerExtensionRequest(5), "/api/timers/{id}/extensions/{extensionId}", timer.id(), id),
                TimerAnswer.class);
    }

    private List<TimerAnswer> timers(Api by) {
        return by.answer(by.get("/api/labdays/{id}/lesson", bench.day.id()), LessonAnswer.class)
                .timers();
    }

    private MvcTestResult put(TimerRequest request) {
        return bench.teacher.put(request, "/api/timers/{id}", UUID.randomUUID());
    }
}
