package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An accident or a near miss, for the school's own log; no names of persons.
 *
 * @param zone key of the hazard zone, if it was in one
 * @param happened 3 to 500 characters
 * @param done what was done about it, 3 to 500 characters
 * @param replaces the incident that this one corrects
 */
public record IncidentRequest(
        UUID labDayId,
        @Nullable UUID teamId,
        @Nullable String zone,
        String happened,
        String done,
        @Nullable UUID replaces,
        Instant noticedAt) {}
