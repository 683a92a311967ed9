package org.berrywatt.server.report;

import static java.util.Objects.requireNonNull;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.berrywatt.contract.CellResultAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.ReportAnswer;
import org.berrywatt.contract.ReportAnswer.CellReport;
import org.berrywatt.contract.ReportAnswer.TeamReport;
import org.berrywatt.contract.TeamCommentAnswer;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.reading.Readings;
import org.berrywatt.server.team.Teams;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/** What a day's report needs beside its leaderboard, findings and stations. */
@Service
class Reports {

    private final LabDays days;
    private final Teams teams;
    private final Cells cells;
    private final Readings readings;
    private final Leaderboards leaderboards;
    private final Comments comments;

    Reports(LabDays days, Teams teams, Cells cells, Readings readings, Leaderboards leaderboards, Comments comments) {
        this.days = days;
        this.teams = teams;
        this.cells = cells;
        this.readings = readings;
        this.leaderboards = leaderboards;
        this.comments = comments;
    }

    /**
     * The report as the records stand at one moment; for teachers.
     *
     * @throws Refusal {@code notFound}
     */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public ReportAnswer of(UUID labDayId, Caller caller) {
        caller.requireTeacher();
        LabDay day = days.find(labDayId).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
        List<Cell> all = cells.ofLabDay(labDayId);
        Map<UUID, List<CellReport>> cellsByTeam =
                all.stream().collect(groupingBy(Cell::teamId, mapping(reporting(labDayId, all, caller), toList())));
        Map<UUID, TeamCommentAnswer> said = comments.ofLabDay(labDayId);
        return new ReportAnswer(
                labDayId,
                teams.ofLabDay(labDayId).stream()
                        .map(team -> new TeamReport(
                                team.id(),
                                said.get(team.id()),
                                day.cellsPerTeam() * teams.parts(team.id()),
                                cellsByTeam.getOrDefault(team.id(), List.of())))
                        .toList());
    }

    private Function<Cell, CellReport> reporting(UUID labDayId, List<Cell> all, Caller caller) {
        Map<UUID, CellResultAnswer> results = leaderboards.results(labDayId);
        Map<UUID, List<ReadingAnswer>> read = readings.byCell(labDayId, caller);
        Set<String> asked = Completeness.asked(all);
        return cell -> CellReports.of(
                cell, requireNonNull(results.get(cell.id())), read.getOrDefault(cell.id(), List.of()), asked);
    }
}
