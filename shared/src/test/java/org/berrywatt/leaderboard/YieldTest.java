package org.berrywatt.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.berrywatt.leaderboard.Boards.figureOf;
import static org.berrywatt.leaderboard.Boards.place;
import static org.berrywatt.leaderboard.Boards.places;
import static org.berrywatt.leaderboard.Teams.certain;
import static org.berrywatt.leaderboard.Teams.failed;
import static org.berrywatt.leaderboard.Teams.team;
import static org.berrywatt.leaderboard.Teams.waiting;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class YieldTest {
    private static final TeamCells TWO_OF_THREE = team("two", certain(1), failed(), certain(1));
    private static final TeamCells ONE_OF_THREE = team("one", failed(), certain(1), failed());

    /** Mean (k + 1/2)/(n + 1) and standard deviation of Beta(5/2, 3/2): 0.21651 (NIST/SEMATECH e-Handbook, 1.3.6.6.17). */
    @Test
    void isTheShareOfDeclaredCellsThatWork() {
        var figure = figureOf(rank(TWO_OF_THREE).get(0));
        assertThat(figure.value()).isCloseTo(2 / 3.0, within(1e-15));
        assertThat(figure.standardUncertainty()).isCloseTo(0.21651, within(0.004));
    }

    /** Chance that a share with Beta(5/2, 3/2) is above one with Beta(3/2, 5/2): 0.7882 by quadrature (SciPy 1.17). */
    @Test
    void doesNotTellTwoOfThreeFromOneOfThree() {
        var standings = rank(ONE_OF_THREE, TWO_OF_THREE);
        assertThat(places(standings)).containsExactly(1, 1);
        assertThat(Objects.requireNonNull(place(standings, "two").chanceAboveNext()))
                .isCloseTo(0.7882, within(0.02));
    }

    @Test
    void tellsSixOfSixFromNoneOfSix() {
        var all = team("all", certain(1), certain(1), certain(1), certain(1), certain(1), certain(1));
        var none = team("none", failed(), failed(), failed(), failed(), failed(), failed());
        assertThat(places(rank(none, all))).containsExactly(1, 2);
    }

    /** 0 of 3 is no proof that the next fails: 95 % of Beta(1/2, 7/2) lie below 0.4441 (SciPy 1.17). */
    @Test
    void leavesHopeToATeamWhoseCellsHaveAllFailed() {
        var figure = figureOf(rank(team("none", failed(), failed(), failed())).get(0));
        assertThat(figure.value()).isZero();
        assertThat(figure.interval().high()).isCloseTo(0.4441, within(0.02));
    }

    @Test
    void leavesOutWhatIsOutstandingWhileEntryIsOpen() {
        assertThat(figureOf(rank(team("a", certain(1), waiting(), failed())).get(0))
                        .value())
                .isEqualTo(0.5);
    }

    private static List<Standing> rank(TeamCells... teams) {
        var terms = new Terms(new Rule(new Yield(), Count.MEAN), 3, true, Teams.TRIALS);
        return Board.of(List.of(teams), terms).standings();
    }
}
