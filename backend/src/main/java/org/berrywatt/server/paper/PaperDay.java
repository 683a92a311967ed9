package org.berrywatt.server.paper;

import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.berrywatt.server.access.Caller;
import org.jspecify.annotations.Nullable;

/** A lab day as paper adds to it: what its things are called, and the one who types. */
final class PaperDay {

    private final Doors doors;
    private final UUID labDayId;
    private final Caller.Teacher teacher;
    private final Names teams = new Names();
    private final Names stations = new Names();
    private final Names cells = new Names();
    private final StandIns standIns;
    private final Faults faults;

    PaperDay(Doors doors, UUID labDayId, Caller.Teacher teacher, StandIns standIns, Faults faults) {
        this.doors = doors;
        this.labDayId = labDayId;
        this.teacher = teacher;
        this.standIns = standIns;
        this.faults = faults;
        doors.teams().ofLabDay(labDayId).forEach(team -> teams.add(team.name(), team.id()));
        doors.stations().list(labDayId, teacher).forEach(station -> stations.add(station.name(), station.id()));
        doors.cells().ofLabDay(labDayId).forEach(cell -> cells.add(cell.label(), cell.id()));
    }

    Doors doors() {
        return doors;
    }

    UUID id() {
        return labDayId;
    }

    Caller.Teacher teacher() {
        return teacher;
    }

    boolean hasTeam(String name) {
        return teams.find(name).isPresent();
    }

    /** The team of a row; a stand-in where nobody knows its name. */
    UUID team(PaperRow row) {
        var name = row.text("team");
        return known(teams, row, "team").orElseGet(() -> {
            var standIn = standIns.team();
            if (!name.isEmpty()) {
                teams.add(name, standIn);
            }
            return standIn;
        });
    }

    UUID cell(PaperRow row) {
        return known(cells, row, "cell").orElseGet(standIns::cell);
    }

    /** Null where the row names none. */
    @Nullable
    UUID station(PaperRow row) {
        return row.text("station").isEmpty()
                ? null
                : known(stations, row, "station").orElseGet(standIns::station);
    }

    /** What a row brings under a name; where it could not, the rows that name it speak of a stand-in. */
    void bring(String column, PaperRow row, Optional<UUID> brought) {
        var name = row.text(column);
        if (!name.isEmpty() && names(column).find(name).isEmpty()) {
            names(column).add(name, brought.orElseGet(standIn(column)));
        }
    }

    private Names names(String column) {
        return switch (column) {
            case "team" -> teams;
            case "station" -> stations;
            default -> cells;
        };
    }

    private Supplier<UUID> standIn(String column) {
        return switch (column) {
            case "team" -> standIns::team;
            case "station" -> standIns::station;
            default -> standIns::cell;
        };
    }

    private Optional<UUID> known(Names names, PaperRow row, String column) {
        var name = row.text(column);
        var found = names.find(name);
        if (found.isEmpty() && !name.isEmpty()) {
            faults.tell(row, column, names.unknown(name));
        }
        return found;
    }
}
