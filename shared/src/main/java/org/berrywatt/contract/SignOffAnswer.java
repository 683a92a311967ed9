package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A team may work in a hazard zone from {@code signedAt} until {@code validUntil} or, if earlier, {@code withdrawnAt}.
 *
 * @param reason why the team may begin although points of the briefing are open; null for an ordinary sign-off
 */
public record SignOffAnswer(
        UUID id,
        UUID teamId,
        String zone,
        List<String> points,
        @Nullable String reason,
        Instant signedAt,
        Instant validUntil,
        @Nullable Instant withdrawnAt) {}
