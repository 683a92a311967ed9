package org.berrywatt.server.report;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toSet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.berrywatt.cell.Stage;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.ReportAnswer.Records;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.RecipeEntry;
import org.berrywatt.server.cell.StageOutcome;

/**
 * How much a team recorded of what was asked of a cell that came so far. What the cell is worth plays no part, and a cell
 * that broke is asked for nothing that only a whole one can give.
 */
final class Completeness {

    private static final List<String> MEASURED = List.of("dark", "light", "sweep");

    private Completeness() {}

    /**
     * The build parameters that a class writes down: those of at least half of its cells. No class writes down all that the
     * catalogue knows, and what one team alone noted is not asked of the others.
     */
    static Set<String> asked(List<Cell> ofDay) {
        Map<String, Long> noted = ofDay.stream()
                .flatMap(cell -> cell.recipe().stream())
                .collect(groupingBy(RecipeEntry::parameter, counting()));
        return noted.entrySet().stream()
                .filter(parameter -> 2 * parameter.getValue() >= ofDay.size())
                .map(Map.Entry::getKey)
                .collect(toSet());
    }

    /**
     * The records of a cell.
     *
     * @param parameters that are asked, as {@link #asked} says
     * @param valid readings that count, oldest first
     */
    static List<Records> of(Cell cell, Set<String> parameters, List<ReadingAnswer> valid) {
        var records = new ArrayList<Records>();
        if (!parameters.isEmpty()) {
            records.add(new Records("recipe", recorded(cell, parameters), parameters.size()));
        }
        records.add(new Records("area", cell.area() == null ? 0 : 1, 1));
        records.add(stages(cell));
        if (cell.failure().isEmpty()) {
            MEASURED.forEach(kind -> records.add(new Records(kind, has(valid, kind) ? 1 : 0, 1)));
        }
        return List.copyOf(records);
    }

    private static int recorded(Cell cell, Set<String> parameters) {
        return (int) parameters.stream()
                .filter(parameter -> cell.entry(parameter).isPresent())
                .count();
    }

    /** Measuring needs no outcome of its own: a light reading is one. */
    private static Records stages(Cell cell) {
        var asked = Arrays.stream(Stage.values())
                .filter(stage -> stage != Stage.MEASURE || endedAt(cell, stage))
                .takeWhile(stage -> endedBefore(cell, stage))
                .map(Stage::key)
                .toList();
        var recorded = cell.outcomes().stream().map(StageOutcome::stage).filter(asked::contains);
        return new Records("stages", (int) recorded.count(), asked.size());
    }

    /** Whether no earlier stage ended the cell. */
    private static boolean endedBefore(Cell cell, Stage stage) {
        return cell.failure()
                .flatMap(failure -> Stage.of(failure.stage()))
                .map(last -> stage.compareTo(last) <= 0)
                .orElse(true);
    }

    private static boolean endedAt(Cell cell, Stage stage) {
        return cell.failure()
                .filter(failure -> failure.stage().equals(stage.key()))
                .isPresent();
    }

    private static boolean has(List<ReadingAnswer> valid, String kind) {
        return valid.stream().anyMatch(reading -> reading.kind().equals(kind));
    }
}
