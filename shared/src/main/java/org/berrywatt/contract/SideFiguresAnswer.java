package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What else is told of a team.
 *
 * @param working cells with a result
 * @param declared cells of the team
 * @param geometricDeviation how many times the power per area of the team's cells typically differs, in [1, infinity); null for fewer than two
 * @param bestVerifiedCell the best cell that somebody else has read again within 15 %; null when there is none
 * @param kept the cell that kept most of its current; null when none was read again later
 */
public record SideFiguresAnswer(
        int working,
        int declared,
        @Nullable Double geometricDeviation,
        @Nullable UUID bestVerifiedCell,
        @Nullable Kept kept) {

    /**
     * A cell that was read again an hour or more after it had settled.
     *
     * @param share of its settled current, in [0, infinity)
     * @param hours since it had settled
     */
    public record Kept(UUID cellId, double share, double hours) {}
}
