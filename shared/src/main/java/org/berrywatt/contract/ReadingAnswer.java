package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An accepted reading as typed and as understood.
 *
 * @param by {@code "team"} or {@code "teacher"}
 * @param unusualConfirmed whether somebody ticked that an unusual number is what the meter showed
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
        List<ToggleAnswer> toggles,
        List<CurvePoint> points,
        boolean unusualConfirmed,
        Instant acceptedAt,
        @Nullable UUID replacedBy,
        List<SetAsideAnswer> setAside) {}
