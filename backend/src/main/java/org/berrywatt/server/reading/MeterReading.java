package org.berrywatt.server.reading;

import java.util.List;
import java.util.UUID;
import org.berrywatt.server.typed.TypedAmount;
import org.jspecify.annotations.Nullable;

/** What was read off the meter, understood. */
record MeterReading(
        ReadingKind kind,
        @Nullable UUID stationId,
        @Nullable TypedAmount voltage,
        @Nullable TypedAmount current,
        @Nullable TypedAmount swappedVoltage,
        @Nullable TypedAmount swappedCurrent,
        List<SweepRow> points,
        List<ToggleRow> toggles,
        boolean unusualConfirmed) {}
