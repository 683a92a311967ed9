package org.berrywatt.server.cell;

import java.util.UUID;

/** Whose cell it is, and of which day. */
public record CellIdentity(UUID id, UUID teamId, UUID labDayId) {}
