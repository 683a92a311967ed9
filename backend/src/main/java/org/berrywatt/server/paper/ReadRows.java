package org.berrywatt.server.paper;

import static java.util.stream.Collectors.groupingBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;

/** Rows of what was read: the light at stations, cells in the dark and under light, and load sweeps. */
record ReadRows(PaperDay day, Entries entries, Choices choices) {

    void irradiance(PaperRow row) {
        var station = day.station(row);
        entries.add(
                PaperTable.IRRADIANCE,
                List.of(row),
                field -> Spots.of(row, "station").apply(field.equals("reading") ? lightColumn(row) : field),
                (id, noticed, at) -> {
                    var request = new IrradianceRequest(Given.need("station", station), light(row), null, noticed);
                    day.doors().stations().putIrradiance(id, request, day.teacher(), at);
                });
    }

    void reading(PaperRow row) {
        var table = PaperTable.READINGS;
        var cell = day.cell(row);
        var station = day.station(row);
        entries.add(table, List.of(row), Spots.of(row, "cell"), (id, noticed, at) -> {
            var kind = table.column("kind");
            var request = new ReadingRequest(
                    cell,
                    choices.read(kind, row.text("kind")),
                    station,
                    row.number("voltage"),
                    row.number("current"),
                    row.number("swapped_voltage"),
                    row.number("swapped_current"),
                    null,
                    YesNo.of("confirmed", row.text("confirmed")),
                    null,
                    null,
                    noticed);
            day.doors().readings().put(id, request, day.teacher(), at);
        });
    }

    /** Rows of one cell at one station with the same number are one sweep. */
    void sweeps(List<PaperRow> rows) {
        rows.stream()
                .collect(groupingBy(ReadRows::sweepOf, LinkedHashMap::new, Collectors.toList()))
                .values()
                .forEach(this::sweep);
    }

    private static List<String> sweepOf(PaperRow row) {
        return List.of(Words.key(row.text("cell")), row.text("sweep"), Words.key(row.text("station")));
    }

    private void sweep(List<PaperRow> rows) {
        var first = rows.get(0);
        var cell = day.cell(first);
        var station = day.station(first);
        entries.add(PaperTable.SWEEP_POINTS, rows, Spots.of(rows), (id, noticed, at) -> {
            var confirmed = rows.stream().anyMatch(row -> YesNo.of("confirmed", row.text("confirmed")));
            var points = rows.stream()
                    .map(row -> new SweepPoint(row.number("load"), row.number("voltage"), row.number("current")))
                    .toList();
            var request = new ReadingRequest(
                    cell, "sweep", station, null, null, null, null, points, confirmed, null, null, noticed);
            day.doors().readings().put(id, request, day.teacher(), at);
        });
    }

    private static String lightColumn(PaperRow row) {
        return row.number("illuminance") == null ? "irradiance" : "illuminance";
    }

    /** @throws Refusal {@code paper.light} for both or neither */
    private static Typed light(PaperRow row) {
        var light = row.number(lightColumn(row));
        if (light == null || (row.number("illuminance") != null && row.number("irradiance") != null)) {
            throw Refusal.of(ProblemCode.PAPER_LIGHT).field("reading");
        }
        return light;
    }
}
