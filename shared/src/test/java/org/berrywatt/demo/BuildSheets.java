package org.berrywatt.demo;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.demo.Life.StageEnd;

/** The files about cells and how they were built. */
record BuildSheets(List<Life> lives, List<Visit> visits) {

    Sheet cells() {
        List<List<Object>> rows = lives.stream()
                .map(Life::cell)
                .sorted(Comparator.comparing(PlannedCell::registered))
                .map(BuildSheets::cell)
                .toList();
        return new Sheet("cells.csv", List.of("id", "team_id", "label", "area", "at"), rows);
    }

    private static List<Object> cell(PlannedCell cell) {
        String area = cell.widthMm() + " x " + cell.heightMm() + " mm";
        return List.of(cell.id(), cell.team().id(), cell.label(), area, When.of(cell.registered()));
    }

    Sheet recipe() {
        List<List<Object>> rows =
                lives.stream().flatMap(life -> Recipe.rows(life.cell())).toList();
        return new Sheet("recipe.csv", List.of("cell_id", "parameter", "text", "unit"), rows);
    }

    Sheet outcomes() {
        List<List<Object>> rows = lives.stream()
                .flatMap(this::ends)
                .sorted(Comparator.comparing(Outcome::at))
                .map(Outcome::row)
                .toList();
        return new Sheet("outcomes.csv", List.of("id", "cell_id", "stage", "passed", "failure", "note", "at"), rows);
    }

    private Stream<Outcome> ends(Life life) {
        Stream<Outcome> built = life.stages().stream().map(end -> new Outcome(life.cell(), end));
        return Stream.concat(built, measured(life).map(end -> new Outcome(life.cell(), end)));
    }

    /** A cell has passed the last stage when its last visit is over, unless it is a battery for good. */
    private Stream<StageEnd> measured(Life life) {
        boolean passed = !life.fate().endsAt("measure");
        return visits.stream()
                .filter(visit ->
                        visit.life().equals(life) && !Battery.of(life.cell()).neverSettles())
                .map(Visit::at)
                .max(Comparator.naturalOrder())
                .map(at -> new StageEnd("measure", passed, passed ? "" : "electrodesTouch", at.plusMinutes(10)))
                .stream();
    }

    private record Outcome(PlannedCell cell, StageEnd end) {
        LocalDateTime at() {
            return end.at();
        }

        List<Object> row() {
            String id = Scenario.id("outcome " + cell.label() + " " + end.stage());
            return List.of(
                    id, cell.id(), end.stage(), end.passed(), end.failure(), Note.on(cell, end), When.of(end.at()));
        }
    }
}
