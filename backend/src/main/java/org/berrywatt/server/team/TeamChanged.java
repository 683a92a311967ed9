package org.berrywatt.server.team;

import java.util.UUID;

/** A team was created. */
public record TeamChanged(UUID labDayId, UUID teamId) {}
