package org.berrywatt.server.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.berrywatt.leaderboard.CellEntry;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.leaderboard.TeamCells;
import org.berrywatt.leaderboard.Terms;
import org.berrywatt.leaderboard.Trials;
import org.berrywatt.leaderboard.Verification;
import org.junit.jupiter.api.Test;

class DayBoardTest {

    private static final Terms TERMS = new Terms(Rule.usual(), 2, true, 40);

    private final TeamCells larch = team(1.0);
    private final TeamCells spruce = team(2.0);

    @Test
    void keepsTheBoardWhenNothingChanged() {
        var day = DayBoard.of(TERMS, List.of(larch, spruce));
        assertThat(day.now(TERMS, List.of(spruce, larch)).board()).isSameAs(day.board());
    }

    @Test
    void followsChangesNewcomersAndLeaversToTheSameBoardAsOneMadeAnew() {
        var day = DayBoard.of(TERMS, List.of(larch, spruce));
        var better = new TeamCells(larch.teamId(), team(3.0).cells());
        var now = List.of(better, team(2.5));
        assertThat(day.now(TERMS, now).board().standings())
                .isEqualTo(DayBoard.of(TERMS, now).board().standings());
    }

    @Test
    void startsAnewUnderOtherTerms() {
        var closed = new Terms(Rule.usual(), 2, false, 40);
        var day = DayBoard.of(TERMS, List.of(larch, spruce)).now(closed, List.of(larch, spruce));
        assertThat(day.board().standings())
                .isEqualTo(DayBoard.of(closed, List.of(larch, spruce)).board().standings());
    }

    private static TeamCells team(double result) {
        var trials = Trials.certain(result, 40);
        return new TeamCells(
                UUID.randomUUID(),
                List.of(new CellEntry.Counts(UUID.randomUUID(), result, trials, Verification.NOT_READ_AGAIN)));
    }
}
