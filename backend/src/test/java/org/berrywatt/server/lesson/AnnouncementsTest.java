package org.berrywatt.server.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.AnnouncementAnswer;
import org.berrywatt.contract.AnnouncementRequest;
import org.berrywatt.contract.ProblemCode;
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
class AnnouncementsTest {

    private final Lesson lesson;
    private final Announcements announcements;
    private final Bench bench;

    @Autowired
    AnnouncementsTest(Lesson lesson, Announcements announcements, MockMvcTester server, JsonMapper json) {
        this.lesson = lesson;
        this.announcements = announcements;
        bench = new Bench(server, json);
    }

    @Test
    void showsTheLatestAnnouncement() {
        announce("Goggles on, please.", null);
        var latest = announce("Tidy up in ten minutes.", null);

        assertThat(standing(Instant.now())).contains(latest);
    }

    @Test
    void showsTheLaterOfTwoAnnouncementsMadeAtTheSameInstant() {
        for (int i = 0; i < 8; i++) {
            var words = "Announcement " + i;
            announcements.put(
                    UUID.randomUUID(),
                    new AnnouncementRequest(bench.day.id(), words, null),
                    bench.teacher.caller(),
                    Bench.NOTICED);
            assertThat(standing(Bench.NOTICED)).map(AnnouncementAnswer::words).contains(words);
        }
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

    private AnnouncementAnswer announce(String words, @Nullable Integer minutes) {
        return bench.teacher.answer(
                put(new AnnouncementRequest(bench.day.id(), words, minutes)), AnnouncementAnswer.class);
    }

    private Optional<AnnouncementAnswer> standing(Instant now) {
        return lesson.announcement(bench.day.id(), now);
    }

    private MvcTestResult put(AnnouncementRequest request) {
        return bench.teacher.put(request, "/api/announcements/{id}", UUID.randomUUID());
    }
}
