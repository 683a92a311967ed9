package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A timer.
 *
 * @param teamId the team it is for, null when it is for the whole class
 * @param cellId the cell it is for, if it is for one
 * @param endsAt by the server's clock; in the past when it is over
 */
public record TimerAnswer(
        UUID id,
        String words,
        @Nullable UUID teamId,
        @Nullable UUID cellId,
        Instant startedAt,
        Instant endsAt) {}
