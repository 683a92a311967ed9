package org.berrywatt.server.data;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.berrywatt.contract.CellResultAnswer;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.server.leaderboard.Draws;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.jspecify.annotations.Nullable;

/** What follows from the records: a row for each cell, computed when it is asked for. */
final class ResultTable {

    /** Counts up whenever the same records give other results. */
    private static final int METHOD = 2;

    private static final List<Entry> ENTRIES = entries();

    private final Leaderboards leaderboards;

    private record Row(LeaderboardState day, TeamStanding team, CellStanding cell, CellResultAnswer result) {}

    private record Entry(Column column, Function<Row, @Nullable Object> value) {}

    ResultTable(Leaderboards leaderboards) {
        this.leaderboards = leaderboards;
    }

    List<Column> columns() {
        return ENTRIES.stream().map(Entry::column).toList();
    }

    void write(UUID labDayId, Layout layout, Appendable out) throws IOException {
        LeaderboardState state = leaderboards.of(labDayId);
        var results = leaderboards.results(labDayId);
        var csv = new Csv(columns(), layout, out);
        for (TeamStanding team : state.teams()) {
            for (CellStanding cell : team.cells()) {
                csv.row(texts(new Row(state, team, cell, requireNonNull(results.get(cell.cellId())))));
            }
        }
    }

    long rows(UUID labDayId) {
        return leaderboards.of(labDayId).teams().stream()
                .mapToLong(team -> team.cells().size())
                .sum();
    }

    private static List<@Nullable String> texts(Row row) {
        var texts = new ArrayList<@Nullable String>();
        ENTRIES.forEach(entry -> texts.add(Optional.ofNullable(entry.value().apply(row))
                .map(String::valueOf)
                .orElse(null)));
        return texts;
    }

    private static List<Entry> entries() {
        var all = new ArrayList<Entry>();
        all.add(text("cell_id", row -> row.cell().cellId()));
        all.add(text("team_id", row -> row.team().teamId()));
        all.add(text("team", row -> row.team().name()));
        all.add(text("cell", row -> row.cell().label()));
        all.add(text("standing", row -> row.cell().standing()));
        all.add(new Entry(
                new Column("ranked", ColumnType.BOOLEAN), row -> row.cell().ranked()));
        all.add(count("team_place", row -> row.team().place()));
        all.add(count("team_place_low", row -> row.team().placeLow()));
        all.add(count("team_place_high", row -> row.team().placeHigh()));
        all.addAll(figure("effective_irradiance", "_w_m2", row -> row.result().effectiveIrradianceWm2()));
        all.addAll(figure("current_density", "_a_m2", row -> row.result().currentDensityAm2()));
        all.addAll(figure("open_circuit_voltage", "_v", row -> row.result().openCircuitVoltageV()));
        all.addAll(figure("fill_factor", "", row -> row.result().fillFactor()));
        all.addAll(figure("power_density", "_w_m2", row -> row.result().powerDensityWm2()));
        all.add(count("method", row -> METHOD));
        all.add(count("trials", row -> Draws.TRIALS));
        all.add(count("seed", row -> Draws.seed(row.day().labDayId())));
        return List.copyOf(all);
    }

    private static Entry text(String name, Function<Row, @Nullable Object> value) {
        return new Entry(new Column(name, ColumnType.STRING), value);
    }

    private static Entry count(String name, Function<Row, @Nullable Object> value) {
        return new Entry(new Column(name, ColumnType.INTEGER), value);
    }

    private static List<Entry> figure(String name, String unit, Function<Row, @Nullable Figure> figure) {
        return List.of(
                number(name + unit, figure, Figure::value),
                number(name + "_uncertainty" + unit, figure, Figure::standardUncertainty),
                number(name + "_low" + unit, figure, Figure::low),
                number(name + "_high" + unit, figure, Figure::high));
    }

    private static Entry number(String name, Function<Row, @Nullable Figure> figure, Function<Figure, Double> part) {
        return new Entry(
                new Column(name, ColumnType.NUMBER),
                row -> Optional.ofNullable(figure.apply(row)).map(part).orElse(null));
    }
}
