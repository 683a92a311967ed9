package org.berrywatt.demo;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Whether a cell survives its build; planted. A cold bake leaves a powder that washes off in the dye, a hot one bends the
 * glass, and at every other stage something goes wrong now and then.
 *
 * @param stage stage that ended the cell, null when it lives
 * @param failure what was seen
 */
record Fate(@Nullable String stage, @Nullable String failure) {

    private static final Fate LIVES = new Fate(null, null);
    private static final Map<Integer, Double> WASHES_OFF = Map.of(350, 0.60, 400, 0.25, 450, 0.04, 500, 0.0);
    private static final double BENDS_AT_500 = 0.08;
    private static final double MISHAP = 0.045;

    static Fate of(PlannedCell cell) {
        Draws draws = cell.draws("fate");
        return List.of(
                        when(draws.happens(MISHAP), "film", "crackedWhileDrying"),
                        when(draws.happens(cell.bakeC() == 500 ? BENDS_AT_500 : 0), "bake", "glassBent"),
                        when(draws.happens(cell.bakeC() == 350 ? 0.15 : 0), "bake", "stayedBrown"),
                        when(draws.happens(WASHES_OFF.getOrDefault(cell.bakeC(), 0.0)), "dye", "washedOff"),
                        when(draws.happens(MISHAP), "fill", "leaked"),
                        when(draws.happens(MISHAP), "measure", "electrodesTouch"))
                .stream()
                .filter(fate -> fate.stage != null)
                .findFirst()
                .orElse(LIVES);
    }

    private static Fate when(boolean happens, String stage, String failure) {
        return happens ? new Fate(stage, failure) : LIVES;
    }

    boolean endsAt(String otherStage) {
        return otherStage.equals(stage);
    }
}
