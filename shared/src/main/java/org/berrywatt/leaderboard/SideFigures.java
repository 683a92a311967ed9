package org.berrywatt.leaderboard;

import java.util.Comparator;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What else a team may be proud of.
 *
 * @param working cells with a result
 * @param declared cells of the team, in [1, ∞)
 * @param geometricDeviation how many times a team's cells typically differ: the exponential of the standard deviation of the
 *     logarithms of the results, in [1, ∞); null for fewer than two results above 0
 * @param bestVerifiedCell the best of the cells that somebody else has read again and found alike; null when there is none
 * @param bestVerified its result
 */
public record SideFigures(
        int working,
        int declared,
        @Nullable Double geometricDeviation,
        @Nullable UUID bestVerifiedCell,
        @Nullable Double bestVerified) {

    static SideFigures of(TeamCells team, int declared) {
        var counting = team.only(CellEntry.Counts.class);
        var best = counting.stream()
                .filter(cell -> cell.verification() == Verification.VERIFIED)
                .max(Comparator.comparingDouble(CellEntry.Counts::value).thenComparing(CellEntry.Counts::cellId));
        return new SideFigures(
                counting.size() + team.only(CellEntry.Excluded.class).size(),
                declared,
                Reproducibility.geometricDeviation(
                        counting.stream().map(CellEntry.Counts::value).toList()),
                best.map(CellEntry.Counts::cellId).orElse(null),
                best.map(CellEntry.Counts::value).orElse(null));
    }
}
