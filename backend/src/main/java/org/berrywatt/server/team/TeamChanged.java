package org.berrywatt.server.team;

import java.util.UUID;

/** A team was created, renamed, given another code, or had another one joined to it. */
public record TeamChanged(UUID labDayId, UUID teamId) {}
