package org.berrywatt.contract;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a lab day's plan is asked for.
 *
 * @param teams in [1, 24]
 * @param cellsPerTeam in [1, 12]
 * @param factors what is varied
 * @param fixed what is the same for all cells
 * @param forbidden combinations that must not be built
 * @param heaters what there is to bake on
 * @param stations places to measure at, in [1, 12]
 * @param minutes time there is, in [0, 1440]
 * @param ratio how many times better one level should be than another to be found, in (1, 100]
 * @param spread geometric standard deviation of cells that a team makes alike, in (1, 10]; null for what earlier days tell,
 *     or the usual one
 * @param standardCell whether the class has a standard cell, made of the first level of everything
 * @param undyedControl whether the class has a cell without dye
 * @param wastePercent share of everything that is lost, in [0, 200]
 * @param seed of every chance; null for a new draw
 */
public record PlanRequest(
        int teams,
        int cellsPerTeam,
        List<PlanFactor> factors,
        List<BuildValue> fixed,
        List<PlanForbidden> forbidden,
        List<PlanHeater> heaters,
        int stations,
        int minutes,
        double ratio,
        @Nullable Double spread,
        boolean standardCell,
        boolean undyedControl,
        int wastePercent,
        @Nullable Long seed) {

    /**
     * What is varied.
     *
     * @param parameter key of a build parameter, or a name of the class's own for what the catalogue does not know
     * @param levels as for {@link BuildValue}; words of the class's own for a parameter of its own
     */
    public record PlanFactor(String parameter, List<Typed> levels) {}

    /**
     * Levels that must not come together, or one that must not be at all.
     *
     * @param levels one for each parameter named, out of its factor's levels
     */
    public record PlanForbidden(List<BuildValue> levels) {}

    /**
     * Something to bake on.
     *
     * @param positions cells that lie on it at once, in [1, 24]
     */
    public record PlanHeater(String name, int positions) {}
}
