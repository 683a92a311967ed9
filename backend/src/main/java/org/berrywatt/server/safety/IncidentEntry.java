package org.berrywatt.server.safety;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What an incident says, understood. */
record IncidentEntry(
        UUID labDayId,
        @Nullable UUID teamId,
        @Nullable String zone,
        String happened,
        String done,
        @Nullable UUID replaces) {}
