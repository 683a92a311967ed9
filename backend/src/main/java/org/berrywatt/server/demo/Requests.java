package org.berrywatt.server.demo;

import static java.util.stream.Collectors.groupingBy;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.ControlCellRequest;
import org.berrywatt.contract.IncidentRequest;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.LabDayRequest;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SignOffRequest;
import org.berrywatt.contract.StationRequest;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.TeamRequest;
import org.jspecify.annotations.Nullable;

/** Turns rows of the demo day into the requests that pages would have sent. */
final class Requests {

    private final Names names;
    private final UUID dayId = Table.rows("labday").findFirst().orElseThrow().id("id");
    private final Map<String, List<Row>> recipes = by("cell_id", "recipe");
    private final Map<String, List<Row>> points = by("reading_id", "sweep-points");

    Requests(Names names) {
        this.names = names;
    }

    LabDayRequest labDay(Row row) {
        return new LabDayRequest(
                names.title(row.text("title")),
                row.date("date"),
                row.typed("reference_irradiance"),
                row.typed("reference_area"),
                row.text("rule"),
                row.count("cells_per_team"),
                row.yes("teams_create_themselves"));
    }

    TeamRequest team(Row row) {
        return new TeamRequest(names.of(dayId), null, row.text("name"));
    }

    StationRequest station(Row row) {
        return new StationRequest(
                names.of(dayId),
                row.text("name"),
                row.text("lamp"),
                row.text("instrument"),
                row.typedOrNothing("distance"),
                row.typedOrNothing("angle"));
    }

    IrradianceRequest irradiance(Row row) {
        return new IrradianceRequest(names.of(row.id("station_id")), row.typed("reading"), null, row.at());
    }

    SignOffRequest signOff(Row row) {
        return new SignOffRequest(
                names.of(row.id("team_id")),
                row.text("zone"),
                List.of(row.text("points").split(" ", -1)),
                row.count("minutes"),
                row.textOrNothing("reason"));
    }

    IncidentRequest incident(Row row) {
        return new IncidentRequest(
                names.of(dayId),
                names.ofNullable(row.idOrNothing("team_id")),
                row.textOrNothing("zone"),
                row.text("happened"),
                row.text("done"),
                null,
                row.at());
    }

    CellRequest cell(Row row) {
        return new CellRequest(
                names.of(row.id("team_id")), row.text("label"), recipe(row), row.typedOrNothing("area"), row.at());
    }

    ControlCellRequest controlCell(Row row) {
        return new ControlCellRequest(names.of(row.id("cell_id")));
    }

    OutcomeRequest outcome(Row row) {
        return new OutcomeRequest(
                names.of(row.id("cell_id")),
                row.text("stage"),
                row.yes("passed"),
                row.textOrNothing("failure"),
                row.textOrNothing("note"),
                null,
                row.at());
    }

    ReadingRequest reading(Row row) {
        return new ReadingRequest(
                names.of(row.id("cell_id")),
                row.text("kind"),
                names.ofNullable(row.idOrNothing("station_id")),
                row.typedOrNothing("voltage"),
                row.typedOrNothing("current"),
                null,
                null,
                sweep(row),
                row.yes("unusual_confirmed"),
                names.ofNullable(row.idOrNothing("replaces")),
                null,
                row.at());
    }

    private List<BuildValue> recipe(Row cell) {
        return recipes.getOrDefault(cell.text("id"), List.of()).stream()
                .map(row -> new BuildValue(row.text("parameter"), row.text("text"), row.textOrNothing("unit")))
                .toList();
    }

    private @Nullable List<SweepPoint> sweep(Row reading) {
        List<Row> rows = points.get(reading.text("id"));
        return rows == null ? null : rows.stream().map(Requests::point).toList();
    }

    private static SweepPoint point(Row row) {
        return new SweepPoint(row.typedOrNothing("load"), row.typedOrNothing("voltage"), row.typedOrNothing("current"));
    }

    private static Map<String, List<Row>> by(String column, String table) {
        return Table.rows(table).collect(groupingBy(row -> row.text(column)));
    }
}
