package org.berrywatt.server.leaderboard;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.light.Station;
import org.berrywatt.server.reading.RecordedReading;
import org.berrywatt.server.team.Team;

/**
 * Everything recorded about a lab day that a leaderboard depends on.
 *
 * @param teams in order of creation
 * @param cells in the order registered
 * @param readings valid readings by cell, oldest first
 * @param control the control cell
 */
record DayRecord(
        LabDay day,
        List<Team> teams,
        List<Cell> cells,
        Map<UUID, Station> stations,
        Map<UUID, List<RecordedReading>> readings,
        Optional<Cell> control) {

    /** This day with a station as it would be. */
    DayRecord with(Station station) {
        var changed = new HashMap<>(stations);
        changed.put(station.id(), station);
        return new DayRecord(day, teams, cells, Map.copyOf(changed), readings, control);
    }

    List<Cell> cellsOf(Team team) {
        return cells.stream().filter(cell -> cell.teamId().equals(team.id())).toList();
    }

    Optional<Station> stationOf(RecordedReading reading) {
        return Optional.ofNullable(reading.stationId()).map(stations::get);
    }

    List<RecordedReading> readingsOf(Cell cell) {
        return readings.getOrDefault(cell.id(), List.of());
    }
}
