package org.berrywatt.contract.calculation;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How many cells were made and how many worked.
 *
 * @param rows 1 to 200, either all with a level or all with a value
 */
public record YieldRequest(@Nullable List<@Nullable Row> rows) {

    /**
     * Cells made alike.
     *
     * @param level name, 1 to 60 characters
     * @param value number, for example a temperature, in [-1e9, 1e9]
     * @param made in [1, 100000]
     * @param worked in [0, made]
     */
    public record Row(
            @Nullable String level,
            @Nullable Double value,
            @Nullable Integer made,
            @Nullable Integer worked) {}
}
