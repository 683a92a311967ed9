package org.berrywatt.server.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.AttentionItem;
import org.berrywatt.contract.FinalRequest;
import org.berrywatt.contract.IncidentRequest;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.labday.LabDayChanges;
import org.berrywatt.server.safety.Incidents;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** Minutes are minutes after noon. */
@ServerTest
class IncidentMattersTest {

    private final Incidents incidents;
    private final LabDayChanges labDays;
    private final Desk desk;
    private final Rehearsal day;
    private final UUID team;

    @Autowired
    IncidentMattersTest(ApplicationContext server, Incidents incidents, LabDayChanges labDays, Desk desk) {
        this.incidents = incidents;
        this.labDays = labDays;
        this.desk = desk;
        day = new Rehearsal(server);
        team = day.team("Larch");
    }

    @Test
    void asksToLookAtAnIncidentUntilATeacherHas() {
        var incident = write(2);
        assertThat(items(3)).singleElement().satisfies(item -> {
            assertThat(item.key()).isEqualTo("incident");
            assertThat(item.urgency()).isEqualTo(1);
            assertThat(item.since()).isEqualTo(minute(2));
            assertThat(item.teamId()).isEqualTo(team);
            assertThat(item.action()).isEqualTo("openIncidents");
        });
        incidents.look(incident, Rehearsal.TEACHER, minute(4));
        assertThat(items(5)).isEmpty();
    }

    @Test
    void tellsNothingOfWhatHappenedSinceTheListMayBeOnAProjector() {
        write(2);
        assertThat(items(3).get(0).values()).isEmpty();
    }

    @Test
    void standsAmongHotStepsWithoutASignOffTheOlderFirst() {
        write(1);
        var cell = day.minute(2).cell(team, "L1", null);
        day.minute(3).passed(cell, "film");
        write(4);
        assertThat(items(5))
                .extracting(AttentionItem::key, AttentionItem::since)
                .containsExactly(
                        tuple("incident", minute(1)), tuple("unsigned", minute(3)), tuple("incident", minute(4)));
    }

    @Test
    void letsGoOfItOnceResultsAreFinal() {
        write(2);
        labDays.setFinal(day.labDayId, new FinalRequest(true, null), Rehearsal.TEACHER, minute(5));
        assertThat(items(6)).isEmpty();
    }

    private UUID write(int afterNoon) {
        var id = UUID.randomUUID();
        var request =
                new IncidentRequest(day.labDayId, team, "glass", "A plate broke", "Swept up", null, minute(afterNoon));
        incidents.put(id, request, Rehearsal.TEACHER, minute(afterNoon));
        return id;
    }

    private List<AttentionItem> items(int afterNoon) {
        return desk.of(day.labDayId, Rehearsal.TEACHER, minute(afterNoon)).items();
    }

    private static Instant minute(int afterNoon) {
        return Rehearsal.NOON.plus(afterNoon, ChronoUnit.MINUTES);
    }
}
