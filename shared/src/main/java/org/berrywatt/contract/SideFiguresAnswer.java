package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What else is told of a team.
 *
 * @param working cells with a result
 * @param declared cells of the team
 * @param geometricDeviation how many times the team's cells typically differ, in [1, infinity); null for fewer than two
 * @param bestVerifiedCell the best cell that somebody else has read again within 15 %; null when there is none
 */
public record SideFiguresAnswer(
        int working,
        int declared,
        @Nullable Double geometricDeviation,
        @Nullable UUID bestVerifiedCell) {}
