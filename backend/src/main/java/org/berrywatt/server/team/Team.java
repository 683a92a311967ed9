package org.berrywatt.server.team;

import java.util.UUID;

/**
 * A team as later features see it.
 *
 * @param mark 0, 1, 2 ... in order of creation within the day
 */
public record Team(UUID id, UUID labDayId, String name, int mark) {}
