package org.berrywatt.server.lesson;

import java.time.Instant;
import java.util.UUID;
import org.berrywatt.server.typed.TypedAmount;
import org.jspecify.annotations.Nullable;

/** A cell's stay on a heater, understood. */
record Stay(
        UUID cellId,
        String heater,
        int position,
        TypedAmount target,
        int holdMinutes,
        Instant inAt,
        @Nullable Instant outAt,
        @Nullable String note) {}
