package org.berrywatt.leaderboard;

import java.util.UUID;

/** A declared cell as the board sees it. */
public sealed interface CellEntry {
    UUID cellId();

    /**
     * A cell whose result counts.
     *
     * @param value in the unit of the rule's metric, in [0, ∞)
     */
    record Counts(UUID cellId, double value, Trials trials, Verification verification) implements CellEntry {
        /**
         * Checks the result.
         *
         * @throws IllegalArgumentException when the value is not in [0, ∞)
         */
        public Counts {
            if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("a result lies in [0, ∞), not " + value);
            }
        }
    }

    /** A cell with a result that the rule does not take. */
    record Excluded(UUID cellId, Verification verification, Obstacle obstacle) implements CellEntry {}

    /** A cell that broke at a stage or gave no output: it counts as 0. */
    record Failed(UUID cellId) implements CellEntry {}

    /** A cell that is being built, or whose result is still missing something. */
    record Waiting(UUID cellId) implements CellEntry {}
}
