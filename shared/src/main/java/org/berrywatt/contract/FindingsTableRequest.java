package org.berrywatt.contract;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A table of cells: a first line of names, then a line for every cell. All columns but those named here are build parameters.
 *
 * @param csv lines parted by commas, semicolons or tabs (RFC 4180)
 * @param outcome column that is compared: a number of 0 or more, or "failed" for a cell that broke
 * @param label column with the cells' names; null: they are numbered
 * @param team column with whoever built them; null: all are of one team
 * @param day column with the lab day; null: all are of one day
 * @param only facet and value with a tab between them; empty or null for all cells
 */
public record FindingsTableRequest(
        @Nullable String csv,
        @Nullable String outcome,
        @Nullable String label,
        @Nullable String team,
        @Nullable String day,
        @Nullable List<String> only) {}
