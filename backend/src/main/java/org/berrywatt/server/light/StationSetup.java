package org.berrywatt.server.light;

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
        @Nullable TypedAmount angle) {}
