package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A reading of the light at a station, in lx or W/m2 as the instrument shows it. */
public record IrradianceRequest(
        UUID stationId, Typed reading, @Nullable UUID replaces, Instant noticedAt) {}
