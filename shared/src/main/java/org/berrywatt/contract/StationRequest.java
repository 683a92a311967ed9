package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A light station.
 *
 * @param lamp key of the kind of lamp, for example {@code "halogen"}
 * @param instrument key of the instrument that reads the light, for example {@code "luxMeter"}
 */
public record StationRequest(
        UUID labDayId,
        String name,
        String lamp,
        String instrument,
        @Nullable Typed distance,
        @Nullable Typed angle) {}
