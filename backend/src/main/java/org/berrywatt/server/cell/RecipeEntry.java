package org.berrywatt.server.cell;

import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;

/**
 * One build parameter of a cell.
 *
 * @param parameter key in the build catalogue
 * @param text the level's key of a sort, the typed characters of a number
 * @param unit unit key of a number
 * @param valueSi a number in the SI unit of its quantity; null for a sort
 * @param words what stands behind a level that names nothing, such as {@code "other"}
 */
@Embeddable
public record RecipeEntry(
        String parameter,
        String text,
        @Nullable String unit,
        @Nullable Double valueSi,
        @Nullable String words) {

    /** An entry that says all by itself. */
    public RecipeEntry(String parameter, String text, @Nullable String unit, @Nullable Double valueSi) {
        this(parameter, text, unit, valueSi, null);
    }
}
