package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** An accepted reading as typed and as understood. */
public record ReadingAnswer(
        UUID id,
        UUID cellId,
        String kind,
        @Nullable UUID stationId,
        @Nullable Typed voltage,
        @Nullable Double voltageV,
        @Nullable Typed current,
        @Nullable Double currentA,
        List<CurvePoint> points,
        Instant acceptedAt,
        @Nullable UUID replacedBy) {}
