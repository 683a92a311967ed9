package org.berrywatt.contract;

import org.jspecify.annotations.Nullable;

/**
 * Name and settings of a light station that were typed wrong, as they should have been from the start.
 *
 * @param name how teams find it, 1 to 24 characters, on its day the only one so called
 * @param lamp key of the kind of lamp
 * @param instrument key of the instrument that reads the light
 * @param reason why, 1 to 120 characters; not needed to ask what would move
 */
public record StationCorrectionRequest(
        String name,
        String lamp,
        String instrument,
        @Nullable Typed distance,
        @Nullable Typed angle,
        @Nullable String reason) {}
