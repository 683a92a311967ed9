package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A recorded light reading of a station.
 *
 * @param totalIrradianceWm2 total irradiance of this lamp that belongs to the typed reading
 * @param readAt when the instrument was read; a correction keeps the time of what it corrects
 */
public record IrradianceAnswer(
        UUID id,
        UUID stationId,
        Typed reading,
        Figure totalIrradianceWm2,
        Instant acceptedAt,
        Instant readAt,
        @Nullable UUID replacedBy) {}
