package org.berrywatt.leaderboard;

import java.util.List;
import java.util.UUID;
import org.berrywatt.normalise.SharedUncertainty;
import org.berrywatt.uncertainty.Estimate;

/** A declared cell as the ranking sees it. */
public sealed interface CellEntry {
    UUID cellId();

    /**
     * A cell with a result.
     *
     * @param powerDensityWm2 in [0, ∞)
     * @param shared the parts of its uncertainty that other cells share
     */
    record Counts(UUID cellId, Estimate powerDensityWm2, List<SharedUncertainty> shared) implements CellEntry {
        /**
         * Checks the result.
         *
         * @throws IllegalArgumentException when the power density is not in [0, ∞)
         */
        public Counts {
            if (!(powerDensityWm2.value() >= 0)) {
                throw new IllegalArgumentException("a power density lies in [0, ∞), not " + powerDensityWm2.value());
            }
        }
    }

    /** A cell that broke at a stage or gave no output: it counts as 0. */
    record Failed(UUID cellId) implements CellEntry {}

    /** A cell that is being built, or whose result is still missing something. */
    record Waiting(UUID cellId) implements CellEntry {}
}
