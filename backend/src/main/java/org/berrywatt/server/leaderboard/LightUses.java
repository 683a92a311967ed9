package org.berrywatt.server.leaderboard;

import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.berrywatt.contract.LightUseAnswer;
import org.berrywatt.contract.LightUseAnswer.CellAtLight;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.light.LightReading;
import org.berrywatt.server.light.Station;
import org.berrywatt.server.team.Team;

/** Which cells lean on which reading of a station's light. */
record LightUses(DayRecord day, Station station, CellJudge judge) {

    /** For each valid reading, oldest first, the cells whose result takes its light from it. */
    List<LightUseAnswer> all() {
        List<Cell> here = day.cells().stream().filter(this::countsHere).toList();
        Map<UUID, String> teams = day.teams().stream().collect(toMap(Team::id, Team::name));
        return station.readings().stream()
                .map(reading -> new LightUseAnswer(
                        reading.id(),
                        here.stream()
                                .filter(cell -> leansOn(cell, reading))
                                .map(cell -> new CellAtLight(
                                        cell.id(), cell.label(), cell.teamId(), teams.getOrDefault(cell.teamId(), "")))
                                .toList()))
                .toList();
    }

    private boolean countsHere(Cell cell) {
        return judge.judge(cell) instanceof Judged.Counts counts
                && counts.station().equals(station.id().toString());
    }

    private boolean leansOn(Cell cell, LightReading reading) {
        return Evidence.among(day.readingsOf(cell))
                .underLight()
                .filter(counting -> CellLight.used(station, counting.readAt()).contains(reading))
                .isPresent();
    }
}
