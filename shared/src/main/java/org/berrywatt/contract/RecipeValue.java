package org.berrywatt.contract;

import org.jspecify.annotations.Nullable;

/**
 * One build parameter of a cell as understood.
 *
 * @param text as typed or the level's key
 * @param words what stands behind a level that names nothing, such as {@code "other"}, in the team's own words
 * @param number value in the parameter's base unit for numbers
 */
public record RecipeValue(
        String parameter,
        String text,
        @Nullable String unit,
        @Nullable Double number,
        @Nullable String words) {}
