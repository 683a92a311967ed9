package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A device that may send readings, or might once.
 *
 * @param token what it shows; in the answer that makes it and never again
 * @param lastAt when it last sent something that was taken; null while it did not
 * @param revokedAt since when it may not any more
 */
public record LoggerAnswer(
        UUID id,
        String name,
        @Nullable UUID teamId,
        @Nullable UUID stationId,
        @Nullable String token,
        Instant madeAt,
        @Nullable Instant lastAt,
        @Nullable Instant revokedAt) {}
