package org.berrywatt.leaderboard;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A team's cells sorted out.
 *
 * <p>A team is ranked from its first cell with a result on, or when all its declared cells have failed. While entry is open,
 * declared cells that are still outstanding are left out: neither 0 nor counted. Once entry is closed they count as 0, so that no
 * team gains by leaving its weak cells unmeasured. A result that the rule does not take is outstanding likewise.
 *
 * @param zeros cells that count as 0
 */
record Tally(
        UUID teamId,
        List<CellEntry.Counts> counting,
        int zeros,
        int failed,
        int outstanding,
        int excluded,
        SideFigures side) {

    static Tally of(TeamCells team, Terms terms) {
        var counting = team.only(CellEntry.Counts.class);
        counting.forEach(cell -> agree(cell, terms));
        int failed = team.only(CellEntry.Failed.class).size();
        int excluded = team.only(CellEntry.Excluded.class).size();
        int declared = Math.max(terms.cellsPerTeam(), team.cells().size());
        int outstanding = declared - counting.size() - failed;
        return new Tally(
                team.teamId(),
                counting,
                terms.entryOpen() ? failed : failed + outstanding,
                failed,
                outstanding,
                excluded,
                SideFigures.of(team, declared));
    }

    private static void agree(CellEntry.Counts cell, Terms terms) {
        if (cell.trials().count() != terms.trials()) {
            throw new IllegalArgumentException("every result of a board has " + terms.trials() + " trials, not "
                    + cell.trials().count());
        }
    }

    /** Null while the team is not ranked. */
    @Nullable
    Contender contender(Terms terms) {
        var nothingLeft = failed > 0 && zeros == failed + outstanding;
        return counting.isEmpty() && !nothingLeft ? null : Contender.of(this, terms);
    }

    Standing unranked() {
        return standing(null, null);
    }

    Standing ranked(Place place, TeamFigure figure) {
        return standing(place, figure);
    }

    private Standing standing(@Nullable Place place, @Nullable TeamFigure figure) {
        return new Standing(teamId, place, figure, counting.size(), failed, outstanding, excluded, side);
    }
}
