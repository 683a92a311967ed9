package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A recorded incident; {@code replacedBy} names the correction where there is one. */
public record IncidentAnswer(
        UUID id,
        @Nullable UUID teamId,
        @Nullable String zone,
        String happened,
        String done,
        Instant noticedAt,
        Instant acceptedAt,
        @Nullable UUID replacedBy) {}
