package org.berrywatt.contract;

import org.jspecify.annotations.Nullable;

/**
 * One build parameter of a cell as entered.
 *
 * @param parameter key in the catalogue, for example {@code "bakeTemperature"}
 * @param text a level's key for a sort ({@code "hibiscus"}), a typed number otherwise ({@code "450"})
 * @param unit unit key of a typed number
 * @param words what stands behind a level that names nothing, such as {@code "other"}, at most 60 characters; left out with any other level
 */
public record BuildValue(
        String parameter,
        String text,
        @Nullable String unit,
        @Nullable String words) {

    /** A value that says all by itself. */
    public BuildValue(String parameter, String text, @Nullable String unit) {
        this(parameter, text, unit, null);
    }
}
