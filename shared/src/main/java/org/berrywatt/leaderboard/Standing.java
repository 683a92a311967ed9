package org.berrywatt.leaderboard;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A team's standing.
 *
 * @param place null while the team is not ranked
 * @param figure what the team is ranked by, in the unit of the rule's metric; null while the team is not ranked
 * @param counted cells whose result counts
 * @param failed cells that count as 0
 * @param outstanding declared cells that are neither, in [0, cells per team]
 * @param excluded outstanding cells with a result that the rule does not take
 */
public record Standing(
        UUID teamId,
        @Nullable Place place,
        @Nullable TeamFigure figure,
        int counted,
        int failed,
        int outstanding,
        int excluded,
        SideFigures side) {}
