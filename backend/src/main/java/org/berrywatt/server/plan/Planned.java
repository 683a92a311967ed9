package org.berrywatt.server.plan;

import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.server.cell.RecipeEntry;
import org.berrywatt.server.plan.PlanContent.PlannedRun;

/**
 * A cell of a plan.
 *
 * @param kind {@code planned}, {@code standard} or {@code undyed}
 * @param team from 1; 0 for the class's own
 */
record Planned(String label, String kind, int team, List<Integer> levels, List<RecipeEntry> recipe, boolean byHand) {

    private static final String DYE = "dyeSource";

    static Planned of(PlannedRun run, List<RecipeEntry> recipe) {
        return new Planned(run.label(), "planned", run.team(), run.levels(), recipe, run.byHand());
    }

    /** The same recipe without dye. */
    static List<RecipeEntry> undyed(List<RecipeEntry> recipe) {
        return Stream.concat(
                        Stream.of(new RecipeEntry(DYE, "none", null, null)),
                        recipe.stream().filter(entry -> !entry.parameter().equals(DYE)))
                .toList();
    }
}
