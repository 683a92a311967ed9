package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A recorded stage outcome; {@code replacedBy} names the correction where there is one. */
public record OutcomeAnswer(
        UUID id,
        UUID cellId,
        String stage,
        boolean passed,
        @Nullable String failure,
        @Nullable String note,
        Instant acceptedAt,
        @Nullable UUID replacedBy) {}
