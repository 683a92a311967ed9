package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An accepted reading as typed and as understood.
 *
 * @param by {@code "team"} or {@code "teacher"}
 * @param swappedVoltage of a covered cell with the leads swapped
 * @param swappedCurrent of a covered cell with the leads swapped
 * @param meterZeroV what swapped leads tell of the meter's zero in V
 * @param meterZeroA what swapped leads tell of the meter's zero in A
 * @param rows of a sweep as typed, in their order
 * @param points of the same rows
 * @param unusualConfirmed whether somebody ticked that an unusual number is what the meter showed
 * @param readAt when it was read: when the server accepted it, or the reading at the start of its corrections
 * @param reason why it corrects another
 * @param replacedBy the reading that corrects this one
 * @param setAside every time that it was set aside or taken back, oldest first; the last one holds
 */
public record ReadingAnswer(
        UUID id,
        UUID cellId,
        String kind,
        String by,
        @Nullable UUID stationId,
        @Nullable Typed voltage,
        @Nullable Double voltageV,
        @Nullable Typed current,
        @Nullable Double currentA,
        @Nullable Typed swappedVoltage,
        @Nullable Typed swappedCurrent,
        @Nullable Double meterZeroV,
        @Nullable Double meterZeroA,
        List<ToggleAnswer> toggles,
        List<SweepPoint> rows,
        List<CurvePoint> points,
        boolean unusualConfirmed,
        Instant acceptedAt,
        Instant readAt,
        @Nullable String reason,
        @Nullable UUID replacedBy,
        List<SetAsideAnswer> setAside) {}
