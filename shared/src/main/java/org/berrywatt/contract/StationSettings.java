package org.berrywatt.contract;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How a station was called and set up, or corrected.
 *
 * @param lamp key of the kind of lamp
 * @param instrument key of the instrument that reads the light
 * @param reason why these took the place of the earlier ones; null for the first
 * @param teacher who corrected them; null for the first
 */
public record StationSettings(
        String name,
        String lamp,
        String instrument,
        @Nullable Typed distance,
        @Nullable Typed angle,
        @Nullable String reason,
        @Nullable String teacher,
        Instant at) {}
