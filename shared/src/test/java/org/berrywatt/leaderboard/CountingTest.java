package org.berrywatt.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.berrywatt.leaderboard.Boards.figure;
import static org.berrywatt.leaderboard.Boards.figureOf;
import static org.berrywatt.leaderboard.Boards.rank;
import static org.berrywatt.leaderboard.Boards.terms;
import static org.berrywatt.leaderboard.Teams.certain;
import static org.berrywatt.leaderboard.Teams.counts;
import static org.berrywatt.leaderboard.Teams.failed;
import static org.berrywatt.leaderboard.Teams.id;
import static org.berrywatt.leaderboard.Teams.normal;
import static org.berrywatt.leaderboard.Teams.team;
import static org.berrywatt.leaderboard.Teams.waiting;

import java.util.List;
import org.junit.jupiter.api.Test;

/** How a team's cells make its figure. */
class CountingTest {

    @Test
    void takesTheMedianOfTheDeclaredCellsWithFailuresAsZero() {
        assertThat(figure(team("a", certain(1), certain(5), certain(2)))).isEqualTo(2);
        // a median of three tolerates one zero
        assertThat(figure(team("a", certain(4), failed(), certain(2)))).isEqualTo(2);
        assertThat(figure(team("a", certain(4), failed(), failed()))).isZero();
    }

    /** JCGM 100:2008, 5.1.2: half of each of the two middle cells, independent: √(0.15² + 0.2²) = 0.25. */
    @Test
    void takesTheMiddleOfTheTwoMiddleCellsOfFour() {
        var cells = team("a", certain(1), counts("x", 20, 0.3), counts("y", 40, 0.4), certain(90));
        var figure = figureOf(Board.of(List.of(cells), terms(Count.MEDIAN, 4, true))
                .standings()
                .get(0));
        assertThat(figure.value()).isEqualTo(30);
        assertThat(figure.standardUncertainty()).isCloseTo(0.25, within(0.006));
        assertThat(figure.interval().width()).isCloseTo(2 * 1.96 * 0.25, within(0.04));
    }

    @Test
    void takesTheMeanWhenTheRuleSaysSo() {
        var board = Board.of(List.of(team("a", certain(1), certain(6), failed())), terms(Count.MEAN, 3, true));
        assertThat(figureOf(board.standings().get(0)).value()).isCloseTo(7 / 3.0, within(1e-12));
    }

    @Test
    void takesTheResultOfTheBestCellAndNotTheLuckiestDraws() {
        var one = counts(1.00, normal("one", 1.00, 0.2), Verification.VERIFIED);
        var other = counts(1.01, normal("other", 1.01, 0.2), Verification.VERIFIED);
        var figure = figureOf(Board.of(List.of(team("a", one, other)), terms(Count.BEST_VERIFIED, 2, true))
                .standings()
                .get(0));
        assertThat(figure.value()).isEqualTo(1.01);
        assertThat(figure.standardUncertainty()).isCloseTo(0.2, within(0.005));
    }

    @Test
    void leavesOutstandingCellsOutWhileEntryIsOpenAndCountsThemAsZeroOnceItIsClosed() {
        var team = List.of(team("a", certain(3), waiting()));
        var open = Board.of(team, terms(Count.MEDIAN, 3, true)).standings().get(0);
        var closed = Board.of(team, terms(Count.MEDIAN, 3, false)).standings().get(0);
        assertThat(figureOf(open).value()).isEqualTo(3);
        assertThat(figureOf(closed).value()).isZero();
        assertThat(open.outstanding()).isEqualTo(2);
        assertThat(open.counted()).isEqualTo(1);
        assertThat(open.failed()).isZero();
    }

    @Test
    void countsExcludedCellsAsOutstanding() {
        var excluded = new CellEntry.Excluded(id("x"), Verification.NOT_READ_AGAIN, Obstacle.NOT_READ_AGAIN);
        var standing = Board.of(List.of(team("a", excluded)), terms(Count.BEST_VERIFIED, 2, true))
                .standings()
                .get(0);
        assertThat(standing.place()).isNull();
        assertThat(standing.excluded()).isEqualTo(1);
        assertThat(standing.outstanding()).isEqualTo(2);
    }

    @Test
    void refusesWhatIsNoResult() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> certain(-1))
                .withMessageContaining("[0, infinity), not -1.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> counts(Double.NaN, Trials.certain(1, 40), Verification.VERIFIED))
                .withMessageContaining("[0, ∞), not NaN");
    }

    @Test
    void refusesResultsOfAnotherNumberOfTrials() {
        var few = team("a", counts(1, Trials.certain(1, 40), Verification.VERIFIED));
        assertThatIllegalArgumentException().isThrownBy(() -> rank(few)).withMessageContaining("10000 trials, not 40");
    }
}
