package org.berrywatt.leaderboard;

import java.util.List;

/** A team that has a figure, among the others that have. */
record RankedTeam(Tally tally, Combination figure) {

    boolean isClearlyAbove(RankedTeam other) {
        return figure.isClearlyAbove(other.figure);
    }

    Standing standing(int place, List<RankedTeam> all) {
        var better =
                (int) all.stream().filter(other -> other.isClearlyAbove(this)).count();
        var worse = (int) all.stream().filter(this::isClearlyAbove).count();
        return new Standing(
                tally.teamId(),
                place,
                1 + better,
                all.size() - worse,
                figure.estimate(),
                tally.counted(),
                tally.failed(),
                tally.outstanding());
    }
}
