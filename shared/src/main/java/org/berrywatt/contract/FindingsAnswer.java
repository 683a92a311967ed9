package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * All findings of a lab day.
 *
 * @param cells every cell, those that broke or wait included
 * @param units unit key of every numeric parameter
 */
public record FindingsAnswer(UUID labDayId, List<Dot> cells, List<UnitOf> units, StudyAnswer study) {

    /**
     * A cell.
     *
     * @param standing {@code "counts"}, {@code "waiting"} or {@code "failed"}
     * @param levels its levels, as they are called in the findings
     */
    public record Dot(
            UUID cellId,
            String label,
            UUID teamId,
            String team,
            int mark,
            String standing,
            @Nullable Figure powerDensityWm2,
            @Nullable String failedStage,
            List<At> levels) {}

    /**
     * Where a cell stands on a build parameter.
     *
     * @param level key of the level, or the number as text
     */
    public record At(String parameter, String level) {}

    /** In which unit a parameter's numbers are told. */
    public record UnitOf(String parameter, String unit) {}
}
