package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Something that was done to a finished cell: it stays the same cell.
 *
 * @param kind {@code "refill"}: new electrolyte; {@code "repair"}: clips, seal or glass set right
 */
public record CellEventRequest(
        UUID cellId, String kind, @Nullable String note, Instant noticedAt) {}
