package org.berrywatt.server.leaderboard;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toMap;

import java.util.UUID;
import java.util.function.Function;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.light.ControlCells;
import org.berrywatt.server.light.Station;
import org.berrywatt.server.light.Stations;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.reading.Readings;
import org.berrywatt.server.reading.RecordedReading;
import org.berrywatt.server.team.Teams;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/** Gathers what is recorded about a lab day, all of it as of one instant. */
@Component
class DayRecords {

    private final LabDays days;
    private final Teams teams;
    private final Cells cells;
    private final Stations stations;
    private final Readings readings;
    private final ControlCells controls;

    DayRecords(LabDays days, Teams teams, Cells cells, Stations stations, Readings readings, ControlCells controls) {
        this.days = days;
        this.teams = teams;
        this.cells = cells;
        this.stations = stations;
        this.readings = readings;
        this.controls = controls;
    }

    /**
     * The records of a day.
     *
     * @throws Refusal {@code notFound} when there is no such day
     */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public DayRecord of(UUID labDayId) {
        LabDay day = days.find(labDayId).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
        return new DayRecord(
                day,
                teams.ofLabDay(labDayId),
                cells.ofLabDay(labDayId),
                stations.ofLabDay(labDayId).stream().collect(toMap(Station::id, Function.identity())),
                readings.ofLabDay(labDayId).stream().collect(groupingBy(RecordedReading::cellId)),
                controls.ofLabDay(labDayId));
    }
}
