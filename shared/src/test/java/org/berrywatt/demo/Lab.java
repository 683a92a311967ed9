package org.berrywatt.demo;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.demo.Rows.Row;
import org.berrywatt.findings.Observation;
import org.berrywatt.findings.Standing;
import org.berrywatt.normalise.CellMeasurement;
import org.berrywatt.normalise.Normalisation;
import org.berrywatt.normalise.Reference;
import org.berrywatt.quantity.Area;
import org.berrywatt.reading.Covered;
import org.berrywatt.reading.DarkCheck;
import org.berrywatt.reading.DarkThresholds;
import org.berrywatt.reading.SolarClass;
import org.berrywatt.uncertainty.Estimate;

/** Takes the class's entries through the science: a cell's latest light counts, with the latest dark. */
final class Lab {

    private static final Reference REFERENCE = new Reference(50, 2.25e-4);

    private final MeterBook meters = new MeterBook();
    private final LightBook lights = new LightBook();
    private final Rows readings = Rows.of("readings");
    private final Rows recipe = Rows.of("recipe");
    private final Rows outcomes = Rows.of("outcomes");
    private final List<String> replaced = readings.column("replaces").toList();

    /** What the dark checks made of a cell, visit by visit. */
    List<SolarClass> classes(Row cell) {
        List<Row> dark = valid(cell, "dark");
        List<Row> light = valid(cell, "light");
        return IntStream.range(0, light.size())
                .mapToObj(visit -> DarkCheck.classify(
                                Covered.oneWay(MeterBook.terminals(dark.get(visit))),
                                MeterBook.terminals(light.get(visit)),
                                DarkThresholds.usual())
                        .solarClass())
                .toList();
    }

    /** Power per area at the reference, for a cell that lives and is a solar cell. */
    Optional<Estimate> powerWm2(Row cell) {
        List<SolarClass> classes = classes(cell);
        boolean counts = !broke(cell) && !classes.isEmpty() && last(classes).counts();
        return counts
                ? Optional.of(Normalisation.of(measurement(cell), REFERENCE)
                        .powerDensityWm2()
                        .estimate())
                : Optional.empty();
    }

    private CellMeasurement measurement(Row cell) {
        Row counting = last(valid(cell, "light", "sweep"));
        Area area = Typed.area(cell.text("area"));
        return new CellMeasurement(
                meters.underLight(counting),
                MeterBook.current(last(valid(cell, "dark"))),
                new Estimate(area.areaM2(), area.standardUncertaintyM2()),
                lights.at(
                        counting,
                        BuildCatalogue.dyeFamilyOf(text(cell, "dyeSource").orElse(""))),
                cell.text("team_id"),
                null);
    }

    Observation observation(Row cell, String parameter) {
        Optional<String> text = text(cell, parameter);
        boolean numeric = BuildCatalogue.of(parameter).orElseThrow().field() != null;
        Optional<Estimate> power = powerWm2(cell);
        Standing lives = power.isPresent() ? Standing.COUNTS : Standing.WAITING;
        return new Observation(
                cell.text("team_id"),
                text.orElse(null),
                numeric ? text.map(Double::valueOf).orElse(null) : null,
                broke(cell) ? Standing.FAILED : lives,
                power.map(Estimate::value).orElse(null));
    }

    private boolean broke(Row cell) {
        return outcomes.where("cell_id", cell.text("id"))
                .anyMatch(row -> row.text("passed").equals("false"));
    }

    private Optional<String> text(Row cell, String parameter) {
        return recipe.where("cell_id", cell.text("id"))
                .filter(row -> row.text("parameter").equals(parameter))
                .map(row -> row.text("text"))
                .findFirst();
    }

    /** Readings that no correction took the place of, oldest first. */
    private List<Row> valid(Row cell, String... kinds) {
        return readings.where("cell_id", cell.text("id"))
                .filter(row -> Stream.of(kinds).anyMatch(row.text("kind")::equals))
                .filter(row -> !replaced.contains(row.text("id")))
                .toList();
    }

    private static <T> T last(List<T> inOrder) {
        return inOrder.get(inOrder.size() - 1);
    }
}
