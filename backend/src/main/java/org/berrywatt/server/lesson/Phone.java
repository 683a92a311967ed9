package org.berrywatt.server.lesson;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * A team's phone as it was last heard of.
 *
 * @param waiting entries that it holds and the server does not, in [0, 9999]
 * @param refusedCodes problem code of each entry that the server refused
 */
public record Phone(UUID id, UUID teamId, int waiting, List<String> refusedCodes, Instant seenAt) {}
