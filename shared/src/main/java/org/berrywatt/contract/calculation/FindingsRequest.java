package org.berrywatt.contract.calculation;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A table of cells whose parameters are looked at.
 *
 * @param outcome name of the column with the performance: a number in [0, 1e9], {@code "failed"}, or null for a cell that waits
 * @param parameters names of the columns looked at, 1 to 24; a column of numbers alone is a number, any other a choice of levels
 * @param block name of the column that says whose cells resemble each other, such as the team; none when left out
 * @param day name of the column with the day; one day when left out
 * @param seed of the draws; 1 when left out
 * @param rows 3 to 2000
 */
public record FindingsRequest(
        @Nullable String outcome,
        @Nullable List<@Nullable String> parameters,
        @Nullable String block,
        @Nullable String day,
        @Nullable Long seed,
        @Nullable List<@Nullable Map<String, @Nullable Object>> rows) {}
