package org.berrywatt.server.paper;

import static org.berrywatt.server.paper.PaperColumn.choice;
import static org.berrywatt.server.paper.PaperColumn.needed;
import static org.berrywatt.server.paper.PaperColumn.number;
import static org.berrywatt.server.paper.PaperColumn.words;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.BuildParameter;
import org.berrywatt.cell.FailureKind;
import org.berrywatt.cell.Stage;
import org.berrywatt.light.Instrument;
import org.berrywatt.light.Lamp;
import org.berrywatt.reading.Fields;

/** The tables for paper records; later ones name what earlier ones bring. */
enum PaperTable {
    TEAMS("teams", needed("team")),
    STATIONS(
            "stations",
            needed("station"),
            choice("lamp", keys(Lamp.values(), Lamp::key), "catalogue.lamp.").whereNeeded(),
            choice("instrument", keys(Instrument.values(), Instrument::key), "catalogue.instrument.")
                    .whereNeeded(),
            number("distance", Fields.DISTANCE),
            number("angle", Fields.ANGLE)),
    CELLS("cells", cells()),
    STAGES(
            "stages",
            needed("cell"),
            choice("stage", keys(Stage.values(), Stage::key), "catalogue.stage.")
                    .whereNeeded(),
            choice("passed", YesNo.CHOICES, YesNo.WORDS).whereNeeded(),
            choice("failure", keys(FailureKind.values(), FailureKind::key), "catalogue.failure."),
            words("note")),
    IRRADIANCE(
            "irradiance",
            needed("station"),
            words("read_at"),
            number("illuminance", Fields.ILLUMINANCE),
            number("irradiance", Fields.IRRADIANCE)),
    READINGS(
            "readings",
            needed("cell"),
            choice("kind", List.of("dark", "light"), "page.bench.reading.").whereNeeded(),
            words("station"),
            words("read_at"),
            number("voltage", Fields.VOLTAGE).whereNeeded(),
            number("current", Fields.CURRENT).whereNeeded(),
            number("swapped_voltage", Fields.VOLTAGE),
            number("swapped_current", Fields.CURRENT),
            choice("confirmed", YesNo.CHOICES, YesNo.WORDS)),
    SWEEP_POINTS(
            "sweep_points",
            needed("cell"),
            words("sweep"),
            needed("station"),
            words("read_at"),
            number("load", Fields.LOAD),
            number("voltage", Fields.VOLTAGE),
            number("current", Fields.CURRENT),
            choice("confirmed", YesNo.CHOICES, YesNo.WORDS));

    private final String key;

    @SuppressWarnings("ImmutableEnumChecker") // a copy
    private final List<PaperColumn> columns;

    PaperTable(String key, PaperColumn... columns) {
        this.key = key;
        this.columns = List.of(columns);
    }

    static Optional<PaperTable> of(String key) {
        return Arrays.stream(values()).filter(table -> table.key.equals(key)).findFirst();
    }

    String key() {
        return key;
    }

    PaperColumn column(String column) {
        return columns.stream()
                .filter(each -> each.key().equals(column))
                .findFirst()
                .orElseThrow();
    }

    List<PaperColumn> columns() {
        return columns;
    }

    private static PaperColumn[] cells() {
        return Stream.concat(
                        Stream.of(needed("team"), needed("cell"), number("area", Fields.AREA)),
                        BuildCatalogue.all().stream().map(PaperTable::column))
                .toArray(PaperColumn[]::new);
    }

    private static PaperColumn column(BuildParameter parameter) {
        var name = PaperColumn.snake(parameter.key());
        var field = parameter.field();
        var column = field == null
                ? choice(name, parameter.levelKeys(), "catalogue.level." + parameter.key() + ".")
                : number(name, field);
        return column.meaning("catalogue.parameter." + parameter.key());
    }

    private static <E> List<String> keys(E[] all, Function<E, String> keyOf) {
        return Arrays.stream(all).map(keyOf).toList();
    }
}
