package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** Clocks that are wrong or are set while a class works: those of phones, and the server's own. */
@ServerTest
class ClockJumpTest {

    private static final int A_YEAR = 365 * 24 * 60;
    private final ApplicationContext server;
    private final Readings readings;
    private final ReadingBench at;

    @Autowired
    ClockJumpTest(ApplicationContext server, Readings readings, MockMvcTester mvc, JsonMapper json) {
        this.server = server;
        this.readings = readings;
        this.at = new ReadingBench(mvc, json);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1970-01-01T00:00:00Z", "2038-01-19T03:14:08Z", "9999-12-31T23:59:59Z"})
    void aPhonesClockCostsNoReadingAndChangesNone(String phonesClock) {
        var right = at.light("412");
        at.accepted(right);
        at.accepted(new ReadingRequest(
                at.cell,
                "light",
                at.station,
                right.voltage(),
                right.current(),
                null,
                null,
                null,
                false,
                null,
                null,
                Instant.parse(phonesClock)));

        assertThat(at.recorded(readings))
                .hasSize(2)
                .extracting(RecordedReading::voltage)
                .containsOnly(at.recorded(readings).get(0).voltage());
    }

    @ParameterizedTest
    @ValueSource(ints = {-A_YEAR, -90, 90, A_YEAR})
    void theServersClockMayBeSetWhileAClassWorks(int minutes) {
        var day = new Rehearsal(server);
        var team = day.team("Larch");
        var yard = day.sunnyStation("Yard");
        day.light(yard, "1000 W/m2");
        var cell = day.cell(team, "L1", "15 x 15 mm");
        day.dark(cell, "0 mV", "0 uA");
        var before = day.lit(cell, yard, "400 mV", "900 uA");

        day.minute(minutes);
        day.light(yard, "1000 W/m2");
        var after = day.lit(cell, yard, "410 mV", "905 uA");

        assertThat(readings.ofLabDay(day.labDayId))
                .extracting(RecordedReading::id)
                .contains(before, after);
        assertThat(server.getBean(Leaderboards.class)
                        .of(day.labDayId)
                        .teams()
                        .get(0)
                        .cells())
                .singleElement()
                .extracting(CellStanding::ranked)
                .isEqualTo(true);
    }
}
