package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A recorded incident.
 *
 * @param lookedAt when a teacher looked at it, or at an earlier wording of it; null while nobody has
 * @param replacedBy names the correction where there is one
 */
public record IncidentAnswer(
        UUID id,
        @Nullable UUID teamId,
        @Nullable String zone,
        String happened,
        String done,
        Instant noticedAt,
        Instant acceptedAt,
        @Nullable Instant lookedAt,
        @Nullable UUID replacedBy) {}
