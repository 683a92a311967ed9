package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * How far a long look at many cells has come.
 *
 * @param state {@code "waiting"}, {@code "running"}, {@code "done"}, {@code "ended"} by a person, or {@code "failed"}
 * @param steps parameters looked at so far
 * @param of parameters to look at
 * @param draws random arrangements drawn so far
 * @param answer {@code "none"}, {@code "rough"} without draws, or {@code "full"}: what may be fetched now
 * @param problem code of what kept it from being finished; null unless it failed
 */
public record FindingsRunAnswer(
        UUID id,
        String state,
        int steps,
        int of,
        long draws,
        String answer,
        @Nullable String problem) {}
