package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A recorded light reading of a station.
 *
 * @param totalIrradianceWm2 total irradiance of this lamp that belongs to the typed reading
 * @param setAside every time that it was set aside or taken back, oldest first; the last one holds
 * @param readAt when the instrument was read; a correction keeps the time of what it corrects
 */
public record IrradianceAnswer(
        UUID id,
        UUID stationId,
        Typed reading,
        Figure totalIrradianceWm2,
        Instant acceptedAt,
        Instant readAt,
        @Nullable UUID replacedBy,
        List<SetAsideAnswer> setAside) {}
