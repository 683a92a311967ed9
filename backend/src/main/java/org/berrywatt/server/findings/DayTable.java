package org.berrywatt.server.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.BuildParameter;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.FindingsAnswer;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.findings.Factor;
import org.berrywatt.findings.Standing;
import org.berrywatt.findings.Study;
import org.berrywatt.findings.Subject;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.StageOutcome;
import org.jspecify.annotations.Nullable;

/** The cells of a lab day with their levels. */
record DayTable(List<Row> rows) {

    /** A cell with where it stands. */
    record Row(Cell cell, TeamStanding team, CellStanding standing) {

        Optional<RecordedLevel> level(BuildParameter parameter) {
            return cell.entry(parameter.key()).map(entry -> RecordedLevel.of(entry, parameter));
        }
    }

    /** A cell registered between the two looks is left for the next one. */
    static DayTable of(LeaderboardState state, Map<UUID, Cell> byId) {
        List<Row> rows = new ArrayList<>();
        for (TeamStanding team : state.teams()) {
            for (CellStanding standing : team.cells()) {
                Optional.ofNullable(byId.get(standing.cellId()))
                        .ifPresent(cell -> rows.add(new Row(cell, team, standing)));
            }
        }
        return new DayTable(rows);
    }

    /** Parameters that somebody recorded, in the order of the catalogue. */
    List<BuildParameter> parameters() {
        return BuildCatalogue.all().stream()
                .filter(parameter ->
                        rows.stream().anyMatch(row -> row.level(parameter).isPresent()))
                .toList();
    }

    Study study() {
        return new Study(
                rows.stream().map(DayTable::subject).toList(),
                parameters().stream().map(this::factor).toList());
    }

    private static Subject subject(Row row) {
        Figure power = row.standing().powerDensityWm2();
        Standing standing = Standing.valueOf(row.standing().standing().toUpperCase(Locale.ROOT));
        return new Subject(
                row.cell().label(),
                row.team().teamId().toString(),
                "",
                standing == Standing.COUNTS && power == null ? Standing.WAITING : standing,
                power == null ? null : Math.max(0, power.value()));
    }

    private Factor factor(BuildParameter parameter) {
        if (parameter.kind() == BuildParameter.Kind.NUMBER) {
            List<@Nullable Double> numbers = new ArrayList<>();
            rows.forEach(row ->
                    numbers.add(row.level(parameter).map(RecordedLevel::number).orElse(null)));
            return Factor.ofNumbers(parameter.key(), numbers);
        }
        List<@Nullable String> keys = new ArrayList<>();
        rows.forEach(
                row -> keys.add(row.level(parameter).map(RecordedLevel::key).orElse(null)));
        return Factor.ofSorts(parameter.key(), keys);
    }

    List<FindingsAnswer.Dot> dots() {
        List<BuildParameter> parameters = parameters();
        return rows.stream().map(row -> dot(row, parameters)).toList();
    }

    private static FindingsAnswer.Dot dot(Row row, List<BuildParameter> parameters) {
        return new FindingsAnswer.Dot(
                row.cell().id(),
                row.cell().label(),
                row.team().teamId(),
                row.team().name(),
                row.team().mark(),
                row.standing().standing(),
                row.standing().powerDensityWm2(),
                row.cell().failure().map(StageOutcome::stage).orElse(null),
                parameters.stream()
                        .flatMap(
                                parameter -> row
                                        .level(parameter)
                                        .map(level -> new FindingsAnswer.At(parameter.key(), level.key()))
                                        .stream())
                        .toList());
    }

    List<FindingsAnswer.UnitOf> units() {
        return parameters().stream()
                .filter(parameter -> parameter.kind() == BuildParameter.Kind.NUMBER)
                .map(parameter -> new FindingsAnswer.UnitOf(
                        parameter.key(), RecordedLevel.unit(parameter).key()))
                .toList();
    }
}
