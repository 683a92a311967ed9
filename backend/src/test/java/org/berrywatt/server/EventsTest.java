package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.AnnouncementRequest;
import org.berrywatt.contract.HeaterOutRequest;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.PhoneRequest;
import org.berrywatt.contract.TimerExtensionRequest;
import org.berrywatt.contract.TimerRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.cell.CellChanged;
import org.berrywatt.server.labday.LabDayChanged;
import org.berrywatt.server.lesson.LessonChanged;
import org.berrywatt.server.light.LightChanged;
import org.berrywatt.server.reading.ReadingAccepted;
import org.berrywatt.server.safety.SafetyChanged;
import org.berrywatt.server.team.TeamChanged;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** What later features hear. */
@ServerTest
@RecordApplicationEvents
class EventsTest {

    private final MockMvcTester server;
    private final JsonMapper json;

    @Autowired
    EventsTest(MockMvcTester server, JsonMapper json) {
        this.server = server;
        this.json = json;
    }

    @Test
    void tellsEachChangeOnceHoweverOftenItIsSent(ApplicationEvents events) {
        var bench = new Bench(server, json);
        var team = bench.team("Sloe");
        var cell = bench.cell(team, "C1");
        var station = bench.station("Lamp");
        var reading = UUID.randomUUID();
        bench.signOff(team, Zone.HEAT);
        team.put(Bench.darkRequest(cell, new Typed("3", "mV")), "/api/readings/{id}", reading);
        team.put(Bench.darkRequest(cell, new Typed("3", "mV")), "/api/readings/{id}", reading);

        var day = bench.day.id();
        assertThat(events.stream(LabDayChanged.class)).containsExactly(new LabDayChanged(day));
        assertThat(events.stream(TeamChanged.class)).containsExactly(new TeamChanged(day, Bench.teamId(team)));
        assertThat(events.stream(SafetyChanged.class)).containsExactly(new SafetyChanged(day));
        assertThat(events.stream(CellChanged.class)).containsExactly(new CellChanged(day, cell));
        assertThat(events.stream(LightChanged.class)).containsExactly(new LightChanged(day, station));
        assertThat(events.stream(ReadingAccepted.class)).containsExactly(new ReadingAccepted(day, cell, reading));
    }

    @Test
    void tellsNothingOfWhatIsRefused(ApplicationEvents events) {
        var bench = new Bench(server, json);
        var team = bench.team("Sloe");
        var cell = bench.cell(team, "C1");
        team.put(Bench.darkRequest(cell, new Typed("400", "V")), "/api/readings/{id}", UUID.randomUUID());
        assertThat(events.stream(ReadingAccepted.class)).isEmpty();
    }

    @Test
    void tellsEachChangeOfTheLessonOnceHoweverOftenItIsSent(ApplicationEvents events) {
        var bench = new Bench(server, json);
        var team = bench.team("Sloe");
        var cell = bench.cell(team, "C1");
        var day = bench.day.id();
        var announcement = UUID.randomUUID();
        var timer = UUID.randomUUID();
        var slot = UUID.randomUUID();
        bench.signOff(team, Zone.HEAT);

        twice(
                bench.teacher,
                new AnnouncementRequest(day, "Goggles on.", null),
                "/api/announcements/{id}",
                announcement);
        twice(bench.teacher, "", "/api/announcements/{id}/end", announcement);
        assertThat(told(events, day)).isEqualTo(2);

        twice(bench.teacher, new TimerRequest(day, "Bake", 60, null, null), "/api/timers/{id}", timer);
        twice(
                bench.teacher,
                new TimerExtensionRequest(5),
                "/api/timers/{id}/extensions/{extension}",
                timer,
                UUID.randomUUID());
        twice(bench.teacher, "", "/api/timers/{id}/end", timer);
        assertThat(told(events, day)).isEqualTo(5);

        var on = new HeaterSlotRequest(cell, "Plate A", 1, new Typed("450", "degC"), 30, null, null, null);
        twice(team, on, "/api/heater-slots/{id}", slot);
        twice(team, new HeaterOutRequest(slot, null), "/api/heater-outs/{id}", UUID.randomUUID());
        assertThat(told(events, day)).isEqualTo(7);

        twice(team, new PhoneRequest(1, List.of("labday.closed")), "/api/phones/{id}", UUID.randomUUID());
        assertThat(told(events, day)).isEqualTo(8);
    }

    @Test
    void tellsNothingWhenAPhoneIsOnlyThere(ApplicationEvents events) {
        var bench = new Bench(server, json);
        twice(bench.team("Sloe"), new PhoneRequest(3, List.of()), "/api/phones/{id}", UUID.randomUUID());
        assertThat(told(events, bench.day.id())).isZero();
    }

    private static void twice(Api by, Object body, String uri, Object... variables) {
        assertThat(by.put(body, uri, variables)).hasStatusOk();
        assertThat(by.put(body, uri, variables)).hasStatusOk();
    }

    private static long told(ApplicationEvents events, UUID day) {
        return events.stream(LessonChanged.class)
                .filter(change -> change.labDayId().equals(day))
                .count();
    }
}
