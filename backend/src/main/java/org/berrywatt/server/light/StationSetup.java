package org.berrywatt.server.light;

import java.time.Instant;
import org.berrywatt.contract.StationSettings;
import org.berrywatt.contract.Typed;
import org.berrywatt.light.Instrument;
import org.berrywatt.light.Lamp;
import org.berrywatt.server.typed.TypedAmount;
import org.jspecify.annotations.Nullable;

/** How a station is set up, understood. */
record StationSetup(
        String name,
        Lamp lamp,
        Instrument instrument,
        @Nullable TypedAmount distance,
        @Nullable TypedAmount angle) {

    StationSettings settings(@Nullable String reason, @Nullable String teacher, Instant at) {
        return new StationSettings(
                name, lamp.key(), instrument.key(), typed(distance), typed(angle), reason, teacher, at);
    }

    private static @Nullable Typed typed(@Nullable TypedAmount amount) {
        return amount == null ? null : amount.typed();
    }
}
