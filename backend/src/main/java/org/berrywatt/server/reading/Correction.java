package org.berrywatt.server.reading;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a correction says of itself.
 *
 * @param replaces the reading in whose place it stands
 * @param reason why; null where a team's own number says enough
 * @param taken who read the cell and when, as the replaced reading had it
 */
record Correction(UUID replaces, @Nullable String reason, Taken taken) {}
