package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * How a stage of a cell ended.
 *
 * @param stage key of the stage, for example {@code "bake"}
 * @param failure key of the kind of failure when the stage was not passed
 * @param note free words, at most 200 characters
 */
public record OutcomeRequest(
        UUID cellId,
        String stage,
        boolean passed,
        @Nullable String failure,
        @Nullable String note,
        @Nullable UUID replaces,
        Instant noticedAt) {}
