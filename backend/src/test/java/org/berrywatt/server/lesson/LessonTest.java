package org.berrywatt.server.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.AnnouncementAnswer;
import org.berrywatt.contract.AnnouncementRequest;
import org.berrywatt.contract.LessonAnswer;
import org.berrywatt.contract.PhoneAnswer;
import org.berrywatt.contract.PhoneRequest;
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
class LessonTest {

    private final Lesson lesson;
    private final Bench bench;
    private final Api sloe;
    private final Api elder;

    @Autowired
    LessonTest(Lesson lesson, MockMvcTester server, JsonMapper json) {
        this.lesson = lesson;
        bench = new Bench(server, json);
        sloe = bench.team("Sloe");
        elder = bench.team("Elder");
    }

    @Test
    void showsTheLatestAnnouncement() {
        announce("Goggles on, please.", null);
        var latest = announce("Tidy up in ten minutes.", null);

        assertThat(standing(Instant.now())).contains(latest);
    }

    @Test
    void letsAnAnnouncementGoWhenItsMinutesAreOver() {
        var announcement = announce("Break until ten past.", 10);
        var end = announcement.madeAt().plus(Duration.ofMinutes(10));

        assertThat(announcement.until()).isEqualTo(end);
        assertThat(standing(end.minusMillis(1))).isPresent();
        assertThat(standing(end)).isEmpty();
    }

    @Test
    void takesAnAnnouncementBackAndDoesNotBringTheOneBeforeIt() {
        announce("Goggles on, please.", null);
        var latest = announce("Tidy up.", null);

        assertThat(bench.teacher.put("", "/api/announcements/{id}/end", latest.id()))
                .hasStatusOk();
        assertThat(bench.teacher.put("", "/api/announcements/{id}/end", latest.id()))
                .hasStatusOk();

        assertThat(standing(Instant.now())).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 481})
    void refusesMinutesThatNoLessonLasts(int minutes) {
        var problem = bench.teacher.problem(
                put(new AnnouncementRequest(bench.day.id(), "Hello", minutes)), ProblemCode.QUANTITY_IMPOSSIBLE);
        assertThat(problem.field()).isEqualTo("minutes");
    }

    @Test
    void refusesAnAnnouncementThatNobodyCouldReadAtOnce() {
        var problem = bench.teacher.problem(
                put(new AnnouncementRequest(bench.day.id(), "x".repeat(201), null)), ProblemCode.TEXT_TOO_LONG);
        assertThat(problem.limit()).isEqualTo("200");
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

    @Test
    void remembersOfAPhoneOnlyWhatItToldLast() {
        var phone = UUID.randomUUID();
        tell(sloe, phone, 3, List.of("labday.closed"));
        var last = tell(sloe, phone, 1, List.of());

        assertThat(phones()).containsExactly(last);
        assertThat(lesson.phones(bench.day.id()))
                .extracting(Phone::waiting, Phone::teamId)
                .containsExactly(tuple(1, Bench.teamId(sloe)));
    }

    @Test
    void keepsADozenPhonesOfATeam() {
        for (int i = 0; i < 14; i++) {
            tell(sloe, UUID.randomUUID(), i, List.of());
        }

        assertThat(phones()).hasSize(12);
    }

    @Test
    void refusesACodeThatNoRefusalHas() {
        var problem = sloe.problem(
                sloe.put(new PhoneRequest(0, List.of("nonsense")), "/api/phones/{id}", UUID.randomUUID()),
                ProblemCode.CHOICE_UNKNOWN);
        assertThat(problem.field()).isEqualTo("refusedCodes");
    }

    private AnnouncementAnswer announce(String words, @Nullable Integer minutes) {
        return bench.teacher.answer(
                put(new AnnouncementRequest(bench.day.id(), words, minutes)), AnnouncementAnswer.class);
    }

    private Optional<AnnouncementAnswer> standing(Instant now) {
        return lesson.announcement(bench.day.id(), now);
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

    private PhoneAnswer tell(Api by, UUID phone, int waiting, List<String> codes) {
        return by.answer(by.put(new PhoneRequest(waiting, codes), "/api/phones/{id}", phone), PhoneAnswer.class);
    }

    private List<PhoneAnswer> phones() {
        return bench.teacher.answers(bench.teacher.get("/api/labdays/{id}/phones", bench.day.id()), PhoneAnswer.class);
    }

    private MvcTestResult put(AnnouncementRequest request) {
        return bench.teacher.put(request, "/api/announcements/{id}", UUID.randomUUID());
    }

    private MvcTestResult put(TimerRequest request) {
        return bench.teacher.put(request, "/api/timers/{id}", UUID.randomUUID());
    }
}
