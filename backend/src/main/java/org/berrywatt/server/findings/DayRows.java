package org.berrywatt.server.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.BuildParameter;
import org.berrywatt.cell.Stage;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.findings.Standing;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.StageOutcome;
import org.berrywatt.server.leaderboard.MeasuredDay;
import org.jspecify.annotations.Nullable;

/**
 * The cells of lab days as a table.
 *
 * @param measure what is compared
 * @param several whether days are told apart
 */
record DayRows(Measure measure, boolean several) {

    StudyTable table(List<MeasuredDay> days) {
        var parameters = recorded(days);
        return new StudyTable(
                parameters.stream().map(DayRows::column).toList(),
                days.stream().flatMap(day -> rows(day, parameters)).toList());
    }

    /** Parameters that somebody recorded, in the order of the catalogue. */
    private static List<BuildParameter> recorded(List<MeasuredDay> days) {
        return BuildCatalogue.all().stream()
                .filter(parameter -> days.stream()
                        .flatMap(day -> day.cells().values().stream())
                        .anyMatch(cell -> cell.entry(parameter.key()).isPresent()))
                .toList();
    }

    private static Column column(BuildParameter parameter) {
        boolean number = parameter.kind() == BuildParameter.Kind.NUMBER;
        return new Column(
                parameter.key(), number, number ? RecordedLevel.unit(parameter).key() : null);
    }

    private Stream<StudyRow> rows(MeasuredDay day, List<BuildParameter> parameters) {
        return day.board().teams().stream()
                .flatMap(team -> team.cells().stream()
                        .flatMap(standing -> Optional.ofNullable(day.cells().get(standing.cellId()))
                                .map(cell -> row(day, team, standing, cell, parameters))
                                .stream()));
    }

    private StudyRow row(
            MeasuredDay day, TeamStanding team, CellStanding standing, Cell cell, List<BuildParameter> parameters) {
        var figure = measure == Measure.POWER
                ? standing.powerDensityWm2()
                : day.ratiosToControl().get(cell.id());
        return new StudyRow(
                cell.id(),
                cell.label(),
                new Group(team.teamId().toString(), team.name()),
                team.mark(),
                several ? new Group(day.day().id().toString(), day.day().title()) : Group.NONE,
                standing(standing, figure),
                standing.standing().equals("counts") ? figure : null,
                cell.failure().map(StageOutcome::stage).orElse(null),
                reached(cell),
                Optional.ofNullable(day.stations().get(cell.id()))
                        .map(station -> new Group(station.id().toString(), station.name()))
                        .orElse(Group.NONE),
                levels(cell, parameters));
    }

    /** A cell that counts and has no figure waits for one. */
    private static Standing standing(CellStanding cell, @Nullable Figure figure) {
        var standing = Standing.valueOf(cell.standing().toUpperCase(Locale.ROOT));
        return standing == Standing.COUNTS && figure == null ? Standing.WAITING : standing;
    }

    private static String reached(Cell cell) {
        return Arrays.stream(Stage.values())
                .map(Stage::key)
                .filter(stage -> cell.outcomes().stream()
                        .anyMatch(outcome -> outcome.passed() && outcome.stage().equals(stage)))
                .reduce("", (earlier, later) -> later);
    }

    private static List<@Nullable String> levels(Cell cell, List<BuildParameter> parameters) {
        List<@Nullable String> levels = new ArrayList<>();
        for (var parameter : parameters) {
            levels.add(cell.entry(parameter.key())
                    .map(entry -> Objects.requireNonNull(
                            RecordedLevel.of(entry, parameter).key()))
                    .orElse(null));
        }
        return levels;
    }
}
