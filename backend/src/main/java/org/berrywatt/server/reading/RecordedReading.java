package org.berrywatt.server.reading;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An accepted reading that no correction has replaced and that is not set aside.
 *
 * @param stationId where the light came from; set for all but dark checks
 * @param voltage in V; set for dark checks and light readings
 * @param current in A, delivered current positive; set for dark checks and light readings
 * @param points rows of a sweep in the order typed; of light toggles, covered and open in turn; empty otherwise
 * @param writtenBy who wrote it, for example {@code "team 7d4c..."}
 * @param acceptedAt when the server accepted it; readings are ordered by this
 */
public record RecordedReading(
        UUID id,
        UUID cellId,
        ReadingKind kind,
        @Nullable UUID stationId,
        @Nullable Measured voltage,
        @Nullable Measured current,
        List<RecordedPoint> points,
        String writtenBy,
        Instant acceptedAt) {}
