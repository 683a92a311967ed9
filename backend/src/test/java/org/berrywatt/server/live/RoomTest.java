package org.berrywatt.server.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.AnnouncementRequest;
import org.berrywatt.contract.LiveMessage;
import org.berrywatt.contract.RoomState;
import org.berrywatt.contract.TimerRequest;
import org.berrywatt.server.Api;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.http.HttpHeaders;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class RoomTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private MockMvcTester http;

    @Autowired
    private JsonMapper json;

    @Autowired
    private Feeds<Room> rooms;

    @LocalServerPort
    private int port;

    private Rehearsal day;
    private Api teacher;

    @BeforeEach
    void open() {
        day = new Rehearsal(server);
        teacher = new Api(http, json, Rehearsal.TEACHER);
    }

    @Test
    void bringsAnAnnouncementToAListeningPageUnderTheNextNumber() throws Exception {
        try (ListeningPage page = listening()) {
            long seq = settled().seq();

            announce("Goggles on, please.");

            LiveMessage message = page.nextAfter(seq);
            assertThat(message.seq()).isEqualTo(seq + 1);
            assertThat(message.kind()).isEqualTo("room");
            assertThat(message.body()).asString().contains("Goggles on, please.");
        }
    }

    @Test
    void growsItsRevisionWithEveryKindOfChange() throws Exception {
        UUID team = day.team("Larch");
        UUID cell = day.cell(team, "L1", "15 x 15 mm");
        long revision = revision();
        for (Runnable change : new Runnable[] {
            () -> day.team("Alder"),
            () -> day.cell(team, "L2", null),
            () -> day.failure(cell, "dye", "washedOff"),
            () -> day.dark(cell, "0 mV", "0 uA"),
            () -> day.sunnyStation("Yard"),
            () -> startTimer(),
        }) {
            change.run();
            long grown = revision();
            assertThat(grown).isGreaterThan(revision);
            revision = grown;
        }
    }

    @Test
    void keepsItsRevisionAndNumberWhileNothingChanges() throws Exception {
        announce("Goggles on, please.");
        LiveMessage first = settled();

        LiveMessage again = rooms.snapshot(day.labDayId);

        assertThat(again.seq()).isEqualTo(first.seq());
        assertThat(revision(again)).isEqualTo(revision(first));
    }

    @Test
    void healsAGapByTheSnapshot() throws Exception {
        long missed = settled().seq();
        announce("Break.");
        LiveMessage snapshot = settled();
        try (ListeningPage page = listening()) {
            announce("Back to work.");

            assertThat(snapshot.seq()).isGreaterThan(missed);
            assertThat(page.nextAfter(snapshot.seq()).seq()).isEqualTo(snapshot.seq() + 1);
        }
    }

    @Test
    void tellsTheTimeFreshlyAndFromNoCache() {
        var first = http.get().uri("/api/labdays/{id}/room", day.labDayId);

        assertThat(first).hasStatusOk().hasHeader(HttpHeaders.CACHE_CONTROL, "no-store");
        assertThat(first).bodyJson().extractingPath("$.body.serverTime").isNotNull();
    }

    @Test
    void knowsNoRoomOfADayThatIsNone() {
        assertThat(http.get().uri("/api/labdays/{id}/room", UUID.randomUUID())).hasStatus(404);
    }

    private ListeningPage listening() throws Exception {
        return ListeningPage.at(port).listenTo(LabDayTopic.of(day.labDayId, "room"));
    }

    private void announce(String words) {
        var request = new AnnouncementRequest(day.labDayId, words, null);
        assertThat(teacher.put(request, "/api/announcements/{id}", UUID.randomUUID()))
                .hasStatusOk();
    }

    private void startTimer() {
        var request = new TimerRequest(day.labDayId, "Bake", 60, null, null);
        assertThat(teacher.put(request, "/api/timers/{id}", UUID.randomUUID())).hasStatusOk();
    }

    private long revision() {
        return revision(settled());
    }

    private static long revision(LiveMessage message) {
        return ((RoomState) Objects.requireNonNull(message.body())).revision();
    }

    /** The state once everything entered so far was looked at. */
    private LiveMessage settled() {
        return rooms.snapshot(day.labDayId);
    }
}
