package org.berrywatt.leaderboard;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A team's cells sorted out, with the figure they make.
 *
 * @param figure null while the team is not ranked
 */
record Tally(UUID teamId, @Nullable Combination figure, int counted, int failed, int outstanding) {

    static Tally of(TeamCells team, Rule rule, int cellsPerTeam, boolean entryOpen) {
        var counting = team.cells().stream()
                .filter(CellEntry.Counts.class::isInstance)
                .map(CellEntry.Counts.class::cast)
                .toList();
        var failed = (int)
                team.cells().stream().filter(CellEntry.Failed.class::isInstance).count();
        var declared = Math.max(cellsPerTeam, team.cells().size());
        var outstanding = declared - counting.size() - failed;
        var zeros = entryOpen ? failed : failed + outstanding;
        var ranked = !counting.isEmpty() || (failed > 0 && zeros == declared);
        return new Tally(
                team.teamId(), ranked ? figure(counting, zeros, rule) : null, counting.size(), failed, outstanding);
    }

    private static Combination figure(List<CellEntry.Counts> counting, int zeros, Rule rule) {
        return TeamFigure.of(counting, zeros).under(rule);
    }

    Standing unranked() {
        return new Standing(teamId, null, null, null, null, counted, failed, outstanding);
    }
}
