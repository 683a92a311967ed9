package org.berrywatt.server.paper;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.StationRequest;
import org.berrywatt.contract.TeamRequest;
import org.berrywatt.light.Instrument;
import org.berrywatt.light.Lamp;
import org.berrywatt.server.access.Caller;
import org.jspecify.annotations.Nullable;

/**
 * What takes the place of a thing that a row names and nobody knows, so that the rest of the row is looked at, too. Only made
 * after a fault was told: the transaction around it leaves nothing.
 */
final class StandIns {

    private final Doors doors;
    private final UUID labDayId;
    private final Caller.Teacher teacher;
    private final Instant now;
    private @Nullable UUID cell;
    private @Nullable UUID station;

    StandIns(Doors doors, UUID labDayId, Caller.Teacher teacher, Instant now) {
        this.doors = doors;
        this.labDayId = labDayId;
        this.teacher = teacher;
        this.now = now;
    }

    /** A team of its own for each name, so that none gets more cells than it may. */
    UUID team() {
        var id = UUID.randomUUID();
        doors.teams().put(id, new TeamRequest(labDayId, null, name(id)), teacher, now);
        return id;
    }

    UUID cell() {
        var made = cell;
        if (made == null) {
            made = UUID.randomUUID();
            var label = made.toString().substring(0, 12);
            doors.cells().put(made, new CellRequest(team(), label, List.of(), null, now), teacher, now);
            cell = made;
        }
        return made;
    }

    UUID station() {
        var made = station;
        if (made == null) {
            made = UUID.randomUUID();
            var request =
                    new StationRequest(labDayId, name(made), Lamp.SUN.key(), Instrument.LUX_METER.key(), null, null);
            doors.stations().put(made, request, teacher, now);
            station = made;
        }
        return made;
    }

    private static String name(UUID id) {
        return id.toString().substring(0, 23);
    }
}
