package org.berrywatt.server.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.BuildParameter;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.StationRequest;
import org.berrywatt.contract.TeamRequest;
import org.berrywatt.server.paper.Entries.Spot;

/** Rows of what was set up and built: teams, stations, cells and how their stages ended. */
record BuiltRows(PaperDay day, Entries entries, Choices choices) {

    /** A team that is there already is nothing new, whoever made it. */
    void team(PaperRow row) {
        if (!day.hasTeam(row.text("team"))) {
            var made = entries.add(
                    PaperTable.TEAMS,
                    List.of(row),
                    Spots.of(row, "team"),
                    (id, noticed, at) -> day.doors()
                            .teams()
                            .put(id, new TeamRequest(day.id(), null, row.needed("team")), day.teacher(), at));
            day.bring("team", row, made);
        }
    }

    void station(PaperRow row) {
        var table = PaperTable.STATIONS;
        var made = entries.add(table, List.of(row), Spots.of(row, "station"), (id, noticed, at) -> {
            var request = new StationRequest(
                    day.id(),
                    row.needed("station"),
                    choice(table, row, "lamp"),
                    choice(table, row, "instrument"),
                    row.number("distance"),
                    row.number("angle"));
            day.doors().stations().put(id, request, day.teacher(), at);
        });
        day.bring("station", row, made);
    }

    void cell(PaperRow row) {
        var team = day.team(row);
        var recipe = recipe(row);
        Function<String, Spot> spots = field -> field.startsWith("recipe[")
                ? new Spot(row, PaperColumn.snake(recipe.get(Spots.index(field)).parameter()))
                : Spots.of(row, "cell").apply(field);
        var made = entries.add(PaperTable.CELLS, List.of(row), spots, (id, noticed, at) -> {
            var request = new CellRequest(team, row.text("cell"), recipe, row.number("area"), noticed);
            day.doors().cells().put(id, request, day.teacher(), at);
        });
        day.bring("cell", row, made);
    }

    void stage(PaperRow row) {
        var table = PaperTable.STAGES;
        var cell = day.cell(row);
        entries.add(table, List.of(row), Spots.of(row, "cell"), (id, noticed, at) -> {
            var failure = row.text("failure").isEmpty() ? null : choice(table, row, "failure");
            var request = new OutcomeRequest(
                    cell,
                    choice(table, row, "stage"),
                    YesNo.of("passed", row.text("passed")),
                    failure,
                    row.orNull("note"),
                    null,
                    noticed);
            day.doors().cells().putOutcome(id, request, day.teacher(), at);
        });
    }

    private List<BuildValue> recipe(PaperRow row) {
        var recipe = new ArrayList<BuildValue>();
        for (BuildParameter parameter : BuildCatalogue.all()) {
            var typed = row.number(PaperColumn.snake(parameter.key()));
            if (typed != null) {
                recipe.add(
                        parameter.field() == null
                                ? level(parameter, typed.text())
                                : new BuildValue(parameter.key(), typed.text(), typed.unit()));
            }
        }
        return recipe;
    }

    private BuildValue level(BuildParameter parameter, String text) {
        var parts = text.split(":", 2);
        var column = PaperTable.CELLS.column(PaperColumn.snake(parameter.key()));
        var level = choices.read(column, text);
        return new BuildValue(parameter.key(), level, null, parts.length > 1 ? parts[1].strip() : null);
    }

    private String choice(PaperTable table, PaperRow row, String column) {
        return choices.read(table.column(column), row.needed(column));
    }
}
