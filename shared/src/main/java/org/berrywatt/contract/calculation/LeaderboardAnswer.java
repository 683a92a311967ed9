package org.berrywatt.contract.calculation;

import java.util.List;
import org.berrywatt.contract.Figure;
import org.jspecify.annotations.Nullable;

/** Teams, best first; those without a result last. */
public record LeaderboardAnswer(List<Entry> entries) {

    /**
     * A team.
     *
     * @param place teams that cannot be told apart share a number; null without a result
     * @param placeLow best place of the 95 % place interval
     * @param placeHigh worst place of it
     * @param chanceAboveNext chance to be above the next entry, in [0, 1]; null for the last one with a place
     * @param figure what the team is ranked by, in the unit of the values
     * @param counted cells whose result counts
     * @param failed cells that count as 0
     * @param outstanding declared cells that are neither
     * @param excluded outstanding cells with a result that the rule does not take
     * @param geometricDeviation how many times its cells typically differ, in [1, ∞); null for fewer than two
     * @param bestVerifiedCell name of the best cell that somebody else has found alike
     */
    public record Entry(
            String team,
            @Nullable Integer place,
            @Nullable Integer placeLow,
            @Nullable Integer placeHigh,
            @Nullable Double chanceAboveNext,
            @Nullable Figure figure,
            int counted,
            int failed,
            int outstanding,
            int excluded,
            @Nullable Double geometricDeviation,
            @Nullable String bestVerifiedCell,
            @Nullable Double bestVerified) {}
}
