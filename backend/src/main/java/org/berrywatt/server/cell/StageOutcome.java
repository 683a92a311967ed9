package org.berrywatt.server.cell;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * How a stage of a cell ended.
 *
 * @param stage key of the stage
 * @param failure key of the kind of failure, null when passed
 */
public record StageOutcome(
        UUID id, String stage, boolean passed, @Nullable String failure, Instant acceptedAt) {}
