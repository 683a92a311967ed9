package org.berrywatt.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.BuildParameter;
import org.berrywatt.demo.Rows.Row;
import org.berrywatt.findings.Factor;
import org.berrywatt.findings.Standing;
import org.berrywatt.findings.Study;
import org.berrywatt.findings.Subject;
import org.berrywatt.normalise.CellMeasurement;
import org.berrywatt.normalise.Normalisation;
import org.berrywatt.normalise.Reference;
import org.berrywatt.quantity.Area;
import org.berrywatt.reading.Covered;
import org.berrywatt.reading.DarkCheck;
import org.berrywatt.reading.DarkThresholds;
import org.berrywatt.reading.SolarClass;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

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

    /** The whole day with every parameter that somebody recorded. */
    Study study(Rows cells) {
        List<Subject> subjects = cells.rows().stream().map(this::subject).toList();
        List<Factor> factors = BuildCatalogue.all().stream()
                .filter(parameter ->
                        recipe.where("parameter", parameter.key()).findAny().isPresent())
                .map(parameter -> factor(parameter, cells))
                .toList();
        return new Study(subjects, factors);
    }

    private Subject subject(Row cell) {
        Optional<Estimate> power = powerWm2(cell);
        Standing lives = power.isPresent() ? Standing.COUNTS : Standing.WAITING;
        return new Subject(
                cell.text("label"),
                cell.text("team_id"),
                "the day",
                broke(cell) ? Standing.FAILED : lives,
                power.map(Estimate::value).orElse(null));
    }

    private Factor factor(BuildParameter parameter, Rows cells) {
        List<@Nullable String> texts = new ArrayList<>();
        cells.rows().forEach(cell -> texts.add(text(cell, parameter.key()).orElse(null)));
        if (parameter.field() == null) {
            return Factor.ofSorts(parameter.key(), texts);
        }
        List<@Nullable Double> numbers = new ArrayList<>();
        texts.forEach(text -> numbers.add(text == null ? null : Double.valueOf(text)));
        return Factor.ofNumbers(parameter.key(), numbers);
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
