package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A team on the leaderboard.
 *
 * @param place shared places are equal numbers; null while the team has no result
 * @param placeLow best place of the 95 % place interval
 * @param placeHigh worst place of the 95 % place interval
 * @param chanceAboveNext chance to be above the next team in order, in [0, 1]; null for the last and while not ranked
 * @param figure what the team is ranked by; null while it is not ranked
 * @param side what else is told of the team
 */
public record TeamStanding(
        UUID teamId,
        String name,
        int mark,
        @Nullable Integer place,
        @Nullable Integer placeLow,
        @Nullable Integer placeHigh,
        @Nullable Double chanceAboveNext,
        @Nullable RankedFigure figure,
        SideFiguresAnswer side,
        @Nullable Remark remark,
        List<CellStanding> cells) {}
