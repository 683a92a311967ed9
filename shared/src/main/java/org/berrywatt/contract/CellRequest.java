package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Registers a cell, best before it is baked.
 *
 * @param label what is scratched on the glass, unique within the day, for example {@code "C2"}
 * @param area typed as sides ({@code "15 x 15"}, unit {@code "mm"}) or as an area ({@code "2,25"}, {@code "cm2"})
 * @param noticedAt the phone's own clock when the entry was made
 */
public record CellRequest(
        UUID teamId,
        String label,
        List<BuildValue> recipe,
        @Nullable Typed area,
        Instant noticedAt) {}
