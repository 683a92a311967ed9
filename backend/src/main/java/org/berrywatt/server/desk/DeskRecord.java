package org.berrywatt.server.desk;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.IncidentAnswer;
import org.berrywatt.contract.SignOffAnswer;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.lesson.HeaterSlot;
import org.berrywatt.server.lesson.Phone;
import org.berrywatt.server.light.Station;
import org.berrywatt.server.reading.RecordedReading;
import org.berrywatt.server.team.Team;

/**
 * What is known of a day at an instant.
 *
 * @param madeAt when each team was made
 * @param readings valid readings by cell, oldest first
 * @param standings as on the leaderboard, by cell
 * @param signOffs of all teams, withdrawn and expired ones among them
 * @param incidents of the day, oldest first, corrected ones among them
 * @param control the day's control cell
 * @param slots every stay on a heater
 * @param phones of all teams, as each was last heard of
 */
record DeskRecord(
        LabDay day,
        Instant now,
        List<Team> teams,
        Map<UUID, Instant> madeAt,
        List<Cell> cells,
        List<Station> stations,
        Map<UUID, List<RecordedReading>> readings,
        Map<UUID, CellStanding> standings,
        List<SignOffAnswer> signOffs,
        List<IncidentAnswer> incidents,
        Optional<Cell> control,
        List<HeaterSlot> slots,
        List<Phone> phones) {

    List<RecordedReading> readingsOf(Cell cell) {
        return readings.getOrDefault(cell.id(), List.of());
    }

    Optional<Cell> cell(UUID id) {
        return cells.stream().filter(cell -> cell.id().equals(id)).findFirst();
    }

    List<Cell> cellsOf(Team team) {
        return cells.stream().filter(cell -> cell.teamId().equals(team.id())).toList();
    }
}
