package org.berrywatt.server.team;

import java.util.UUID;

/**
 * A team is being joined to another one. Told within the transaction, so that a feature that keeps things by team moves
 * them along with it.
 */
public record TeamMerged(UUID labDayId, UUID teamId, UUID into) {}
