package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Asks what the cells of several lab days say together.
 *
 * @param days one to sixty of them
 * @param measure {@code "power"} or {@code "ratioToControl"}
 * @param only facet and value with a tab between them; empty or null for all cells
 */
public record FindingsDaysRequest(
        @Nullable List<UUID> days,
        @Nullable String measure,
        @Nullable List<String> only) {}
