package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * All findings of the cells of one lab day, of several, or of a table.
 *
 * @param measure what is compared: {@code "power"} per area in W/m², {@code "ratioToControl"} or {@code "outcome"}
 * @param outcome what the compared column of a table is called; null for cells of lab days
 * @param all how many cells there are before the filter
 * @param leftOut cells that the filter leaves out, by label, a few hundred at most
 * @param choices what can be filtered by, with how many of all cells each value has
 * @param looked how many cells the study looks at, those that broke or wait included
 * @param cells those cells; of many thousands an even selection
 * @param units unit key of every numeric parameter that has one
 * @param notes what to know about how the cells were put together
 */
public record FindingsAnswer(
        String measure,
        @Nullable String outcome,
        int all,
        List<String> leftOut,
        List<Choice> choices,
        int looked,
        List<Dot> cells,
        List<UnitOf> units,
        StudyAnswer study,
        List<Remark> notes) {

    /**
     * What cells can be filtered by.
     *
     * @param key {@code "team"}, {@code "day"}, {@code "station"}, {@code "stage"}, {@code "standing"}, or {@code "level."} and a
     *     build parameter
     */
    public record Choice(String key, List<Value> values) {}

    /**
     * One value to filter by.
     *
     * @param value empty for cells where it was not recorded
     * @param name what people call it, where no text tells
     */
    public record Value(String value, String name, int cells) {}

    /**
     * A cell.
     *
     * @param cellId null for a row of a table
     * @param day title of its lab day, or what the table calls it; empty where there is only one
     * @param mark of its team; null for a row of a table
     * @param standing {@code "counts"}, {@code "waiting"} or {@code "failed"}
     * @param figure what is compared; null for a cell that does not count
     * @param levels its levels, as they are called in the findings
     */
    public record Dot(
            @Nullable UUID cellId,
            String label,
            String team,
            String day,
            @Nullable Integer mark,
            String standing,
            @Nullable Figure figure,
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
