package org.berrywatt.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.berrywatt.leaderboard.Boards.terms;
import static org.berrywatt.leaderboard.Teams.certain;
import static org.berrywatt.leaderboard.Teams.counts;
import static org.berrywatt.leaderboard.Teams.failed;
import static org.berrywatt.leaderboard.Teams.id;
import static org.berrywatt.leaderboard.Teams.normal;
import static org.berrywatt.leaderboard.Teams.team;
import static org.berrywatt.leaderboard.Teams.waiting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The same board whatever the order, and after a change the same as one made anew. */
class BoardChangesTest {

    @ParameterizedTest
    @EnumSource
    void doesNotCareAboutTheOrderOfTeamsOrCells(Count count) {
        var teams = new ArrayList<>(someTeams());
        var first = Board.of(teams, terms(count, 3, true)).standings();
        var random = new Random(5);
        for (int i = 0; i < 20; i++) {
            Collections.shuffle(teams, random);
            var shuffled = teams.stream().map(team -> shuffled(team, random)).toList();
            assertThat(Board.of(shuffled, terms(count, 3, true)).standings()).isEqualTo(first);
        }
    }

    @Test
    void changesOneTeamToTheSameBoardAsAFullRecompute() {
        var random = new Random(11);
        var teams = new ArrayList<>(someTeams());
        var board = Board.of(teams, terms(Count.MEDIAN, 3, true));
        for (int i = 0; i < 40; i++) {
            var changed = team("" + (char) ('a' + random.nextInt(8)), random.nextDouble() + 1, random.nextDouble() + 1);
            teams.removeIf(team -> team.teamId().equals(changed.teamId()));
            teams.add(changed);
            board = board.with(changed);
            assertThat(board.standings())
                    .isEqualTo(Board.of(teams, terms(Count.MEDIAN, 3, true)).standings());
        }
    }

    @Test
    void leavesTheEarlierBoardAsItWas() {
        var board = Board.of(someTeams(), terms(Count.MEDIAN, 3, true));
        var before = board.standings();
        board.with(team("b", 50)).without(id("d"));
        assertThat(board.standings()).isEqualTo(before);
    }

    @Test
    void forgetsATeamWithoutTrace() {
        var all = Board.of(someTeams(), terms(Count.MEDIAN, 3, true));
        var fewer = someTeams().stream()
                .filter(team -> !team.teamId().equals(id("b")))
                .toList();
        assertThat(all.without(id("b")).standings())
                .isEqualTo(Board.of(fewer, terms(Count.MEDIAN, 3, true)).standings());
    }

    private static List<TeamCells> someTeams() {
        return List.of(
                team("a", counts("p", 2, 0.5), failed(), counts("q", 2, 0.1)),
                team("b", 2, 2.2, 1.9),
                team("c", waiting()),
                team("d", counts(2, normal("v", 2, 0.1), Verification.VERIFIED), certain(2)),
                team("e", failed(), failed(), failed()));
    }

    private static TeamCells shuffled(TeamCells team, Random random) {
        var cells = new ArrayList<>(team.cells());
        Collections.shuffle(cells, random);
        return new TeamCells(team.teamId(), cells);
    }
}
