package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A recorded stage outcome; {@code replacedBy} names the correction where there is one.
 *
 * @param by {@code "team"} or {@code "teacher"}
 */
public record OutcomeAnswer(
        UUID id,
        UUID cellId,
        String stage,
        boolean passed,
        @Nullable String failure,
        @Nullable String note,
        String by,
        Instant acceptedAt,
        @Nullable UUID replacedBy) {}
