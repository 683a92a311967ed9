package org.berrywatt.server.leaderboard;

import java.util.Map;
import org.berrywatt.contract.Remark;
import org.berrywatt.leaderboard.Count;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.leaderboard.Standing;
import org.jspecify.annotations.Nullable;

/** What to know about a team's figure; texts {@code standing.team.*} of the catalogue. */
final class TeamRemarks {

    private TeamRemarks() {}

    /** Why a team has no place, or how many of its declared cells are not in its figure yet. */
    static @Nullable Remark of(Standing standing, Rule rule, boolean entryOpen) {
        if (standing.place() == null) {
            return Remark.of(standing.excluded() > 0 ? noneTaken(rule) : "standing.team.noResult");
        }
        if (standing.counted() == 0) {
            return Remark.of("standing.team.allFailed");
        }
        return standing.outstanding() == 0 ? null : outstanding(standing, entryOpen);
    }

    private static String noneTaken(Rule rule) {
        return rule.count() == Count.BEST_VERIFIED ? "standing.team.noneVerified" : "standing.team.noneRanked";
    }

    private static Remark outstanding(Standing standing, boolean entryOpen) {
        return new Remark(
                entryOpen ? "standing.team.outstanding" : "standing.team.outstandingAtClose",
                Map.of("cells", standing.outstanding()));
    }
}
