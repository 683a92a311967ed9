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
 * @param swappedVoltage in V, leads swapped; set for dark checks that were read both ways
 * @param swappedCurrent in A, leads swapped; set for dark checks that were read both ways
 * @param points rows of a sweep in the order typed; of light toggles, covered and open in turn; empty otherwise
 * @param readBy who read it, for example {@code "team 7d4c..."}; whoever corrects a slip has not read the cell
 * @param readAt when the server accepted it, or the first of those that it corrects; readings are ordered by this
 */
public record RecordedReading(
        UUID id,
        UUID cellId,
        ReadingKind kind,
        @Nullable UUID stationId,
        @Nullable Measured voltage,
        @Nullable Measured current,
        @Nullable Measured swappedVoltage,
        @Nullable Measured swappedCurrent,
        List<RecordedPoint> points,
        String readBy,
        Instant readAt) {}
