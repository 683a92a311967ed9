package org.berrywatt.server.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.UUID;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.contract.LiveMessage;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.http.HttpHeaders;
import org.springframework.test.web.servlet.MockMvc;

@ServerTest
class LiveTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private MockMvc browser;

    @Autowired
    private Feeds<LeaderboardState> feeds;

    @LocalServerPort
    private int port;

    private Rehearsal day;
    private UUID cell;
    private UUID station;

    @BeforeEach
    void measureTheLight() {
        day = new Rehearsal(server);
        cell = day.cell(day.team("Larch"), "L1", "15 x 15 mm");
        station = day.sunnyStation("Yard");
        day.light(station, "1000 W/m2");
    }

    @Test
    void bringsAnAcceptedReadingToAListeningPageUnderTheNextNumber() throws Exception {
        day.dark(cell, "0 mV", "0 uA");
        try (ListeningPage page = ListeningPage.at(port).listenTo(day.labDayId)) {
            long seq = settledSeq();

            day.lit(cell, station, "400 mV", "900 uA");

            LiveMessage message = page.nextAfter(seq);
            assertThat(message.seq()).isEqualTo(seq + 1);
            assertThat(message.body()).asString().contains("standing=counts");
        }
    }

    @Test
    void healsAGapByTheSnapshot() throws Exception {
        long missed = settledSeq();
        day.dark(cell, "0 mV", "0 uA");

        LiveMessage snapshot = feeds.snapshot(day.labDayId);
        try (ListeningPage page = ListeningPage.at(port).listenTo(day.labDayId)) {
            day.lit(cell, station, "400 mV", "900 uA");

            assertThat(snapshot.seq()).isGreaterThan(missed);
            assertThat(page.nextAfter(snapshot.seq()).seq()).isEqualTo(snapshot.seq() + 1);
        }
    }

    @Test
    void refusesWhatAClientSends() throws Exception {
        try (ListeningPage page = ListeningPage.at(port)) {
            page.send(LabDayTopic.of(day.labDayId, "leaderboard"));

            assertThat(page.nextError())
                    .as("the sentence, or the end of the line that may overtake it")
                    .containsAnyOf("it takes nothing", "Connection closed");
        }
    }

    @Test
    void refusesToListenToAllLeaderboardsAtOnce() throws Exception {
        try (ListeningPage page = ListeningPage.at(port).listenTo("/topic/labday.*.leaderboard")) {
            assertThat(page.nextError()).contains("it takes nothing");
        }
    }

    @Test
    void turnsPagesOfOtherSitesAway() {
        assertThatThrownBy(() -> ListeningPage.ofOrigin("https://elsewhere.example", port))
                .rootCause()
                .hasMessageContaining("403");
    }

    @Test
    void knowsNoLeaderboardOfADayThatIsNone() throws Exception {
        browser.perform(get("/api/labdays/{id}/leaderboard", UUID.randomUUID()))
                .andExpect(status().isNotFound())
                .andExpect(jsonPath("$.code").value("notFound"));
    }

    @Test
    void spendsNoBytesOnASnapshotThatIsKnown() throws Exception {
        settledSeq();
        String tag = browser.perform(get("/api/labdays/{id}/leaderboard", day.labDayId))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.kind").value("leaderboard"))
                .andReturn()
                .getResponse()
                .getHeader(HttpHeaders.ETAG);

        browser.perform(get("/api/labdays/{id}/leaderboard", day.labDayId)
                        .header(HttpHeaders.IF_NONE_MATCH, String.valueOf(tag)))
                .andExpect(status().isNotModified());
    }

    /** The number once everything entered so far was looked at. */
    private long settledSeq() {
        return feeds.snapshot(day.labDayId).seq();
    }
}
