package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Sets a reading aside, so that no result is computed from it, or takes that back.
 *
 * @param reason why it is set aside, 1 to 120 characters for team and teacher to read; null takes it back
 */
public record SetAsideRequest(UUID readingId, @Nullable String reason) {}
