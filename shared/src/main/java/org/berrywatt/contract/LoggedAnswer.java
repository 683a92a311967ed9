package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;

/**
 * A device's reading that is kept.
 *
 * @param entryId under which the reading is known to everybody else
 */
public record LoggedAnswer(UUID entryId, Instant acceptedAt) {}
