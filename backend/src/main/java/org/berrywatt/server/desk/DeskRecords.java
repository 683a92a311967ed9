package org.berrywatt.server.desk;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toMap;

import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.berrywatt.server.lesson.Lesson;
import org.berrywatt.server.light.ControlCells;
import org.berrywatt.server.light.Stations;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.reading.Readings;
import org.berrywatt.server.reading.RecordedReading;
import org.berrywatt.server.safety.Incidents;
import org.berrywatt.server.safety.Safety;
import org.berrywatt.server.team.Teams;
import org.springframework.stereotype.Component;

/** Gathers what is known of a day. */
@Component
class DeskRecords {

    private final LabDays days;
    private final Teams teams;
    private final Cells cells;
    private final Stations stations;
    private final ControlCells controls;
    private final Readings readings;
    private final Leaderboards leaderboards;
    private final Safety safety;
    private final Incidents incidents;
    private final Lesson lesson;

    DeskRecords(
            LabDays days,
            Teams teams,
            Cells cells,
            Stations stations,
            ControlCells controls,
            Readings readings,
            Leaderboards leaderboards,
            Safety safety,
            Incidents incidents,
            Lesson lesson) {
        this.days = days;
        this.teams = teams;
        this.cells = cells;
        this.stations = stations;
        this.controls = controls;
        this.readings = readings;
        this.leaderboards = leaderboards;
        this.safety = safety;
        this.incidents = incidents;
        this.lesson = lesson;
    }

    /**
     * What is known of a day at an instant.
     *
     * @throws Refusal {@code notFound} when there is no such day
     */
    DeskRecord of(UUID labDayId, Caller.Teacher teacher, Instant now) {
        return new DeskRecord(
                days.find(labDayId).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND)),
                now,
                teams.ofLabDay(labDayId),
                teams.madeAt(labDayId),
                cells.ofLabDay(labDayId),
                stations.ofLabDay(labDayId),
                readings.ofLabDay(labDayId).stream().collect(groupingBy(RecordedReading::cellId)),
                standings(labDayId),
                safety.list(labDayId, teacher),
                incidents.list(labDayId, teacher),
                controls.ofLabDay(labDayId),
                lesson.slots(labDayId),
                lesson.phones(labDayId));
    }

    private Map<UUID, CellStanding> standings(UUID labDayId) {
        return leaderboards.of(labDayId).teams().stream()
                .flatMap(team -> team.cells().stream())
                .collect(toMap(CellStanding::cellId, Function.identity()));
    }
}
