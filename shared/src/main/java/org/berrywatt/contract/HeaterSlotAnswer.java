package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A cell's stay on a heater. How it stands follows from the times: heating until {@code holdUntil}, then over until it is
 * taken out at {@code outAt}, then cooling until {@code coolUntil}.
 *
 * @param label the cell's label
 * @param outAt null while it is on the heater
 * @param coolUntil null while it is on the heater; also afterwards check before touching, since hot glass looks cold
 */
public record HeaterSlotAnswer(
        UUID id,
        UUID cellId,
        UUID teamId,
        String label,
        String heater,
        int position,
        Typed target,
        double targetDegC,
        int holdMinutes,
        Instant inAt,
        Instant holdUntil,
        @Nullable Instant outAt,
        @Nullable Instant coolUntil) {}
