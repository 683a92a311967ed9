package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.berrywatt.contract.Typed;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.cell.CellChanged;
import org.berrywatt.server.labday.LabDayChanged;
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
}
