package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * A team's phone as it was last heard of.
 *
 * @param seenAt by the server's clock
 */
public record PhoneAnswer(UUID id, UUID teamId, int waiting, List<String> refusedCodes, Instant seenAt) {}
