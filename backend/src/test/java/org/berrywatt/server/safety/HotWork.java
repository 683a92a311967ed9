package org.berrywatt.server.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SignOffRequest;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationContext;

/** A team and its cell at hot and corrosive steps. Minutes are minutes after noon, by the server's clock. */
final class HotWork {

    private static final Instant NOON = Instant.parse("2026-05-05T12:00:00Z");

    final Cells cells;
    final Safety safety;
    final Rehearsal day;
    final UUID teamId;
    final Caller team;
    final UUID cell = UUID.randomUUID();

    HotWork(ApplicationContext server) {
        cells = server.getBean(Cells.class);
        safety = server.getBean(Safety.class);
        day = new Rehearsal(server);
        teamId = day.team("Sloe");
        team = new Caller.TeamMember(teamId, day.labDayId);
        register(cell, "C1", List.of());
    }

    void assertRefused(String stage, int noticed, int accepted) {
        assertThatThrownBy(() -> passes(stage, noticed, accepted))
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.ZONE_NOT_SIGNED_OFF));
    }

    UUID passes(String stage, int noticed, int accepted) {
        return outcome(cell, stage, null, null, null, team, noticed, accepted);
    }

    UUID outcome(
            UUID cellId,
            String stage,
            @Nullable String failure,
            @Nullable String note,
            @Nullable UUID replaces,
            Caller caller,
            int noticed,
            int accepted) {
        var id = UUID.randomUUID();
        var request = new OutcomeRequest(cellId, stage, failure == null, failure, note, replaces, minute(noticed));
        cells.putOutcome(id, request, caller, minute(accepted));
        return id;
    }

    UUID signOff(UUID signed, Zone zone, int from, int minutes) {
        var id = UUID.randomUUID();
        var request = new SignOffRequest(signed, zone.key(), zone.points(), minutes, null);
        safety.putSignOff(id, request, Rehearsal.TEACHER, minute(from));
        return id;
    }

    void register(UUID id, String label, List<BuildValue> recipe) {
        cells.put(id, new CellRequest(teamId, label, recipe, null, minute(0)), team, minute(0));
    }

    static Instant minute(int afterNoon) {
        return NOON.plus(afterNoon, ChronoUnit.MINUTES);
    }
}
