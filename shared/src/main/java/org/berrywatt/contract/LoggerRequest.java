package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Lets a device send readings: of one team's cells, or of one station's light.
 *
 * @param name by which the teacher tells it from others, 1 to 40 characters
 * @param teamId whose cells it reads; null for the light of a station
 * @param stationId whose light it reads; null for the cells of a team
 */
public record LoggerRequest(
        String name, @Nullable UUID teamId, @Nullable UUID stationId) {}
