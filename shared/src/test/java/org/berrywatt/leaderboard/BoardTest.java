package org.berrywatt.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.berrywatt.leaderboard.Boards.figureOf;
import static org.berrywatt.leaderboard.Boards.place;
import static org.berrywatt.leaderboard.Boards.places;
import static org.berrywatt.leaderboard.Boards.rank;
import static org.berrywatt.leaderboard.Boards.standing;
import static org.berrywatt.leaderboard.Teams.certain;
import static org.berrywatt.leaderboard.Teams.counts;
import static org.berrywatt.leaderboard.Teams.failed;
import static org.berrywatt.leaderboard.Teams.id;
import static org.berrywatt.leaderboard.Teams.normal;
import static org.berrywatt.leaderboard.Teams.team;
import static org.berrywatt.leaderboard.Teams.waiting;

import org.junit.jupiter.api.Test;

/** Who has which place. */
class BoardTest {

    @Test
    void ranksATeamFromItsFirstResultOn() {
        var standings = rank(team("waits", waiting(), waiting()), team("works", certain(1)), team("broke", failed()));
        assertThat(place(standings, "works").number()).isEqualTo(1);
        assertThat(standing(standings, "waits").place()).isNull();
        assertThat(standing(standings, "waits").figure()).isNull();
        assertThat(standing(standings, "broke").place()).isNull();
        assertThat(standings.get(0).teamId()).isEqualTo(id("works"));
    }

    @Test
    void ranksATeamWhoseCellsHaveAllFailedWithZero() {
        var standings = rank(team("broke", failed(), failed(), failed()), team("works", 1, 1, 1));
        assertThat(place(standings, "broke").number()).isEqualTo(2);
        assertThat(figureOf(standing(standings, "broke")).value()).isZero();
    }

    @Test
    void putsClearlyDifferentTeamsOnPlacesOfTheirOwn() {
        var standings = rank(team("low", 1, 1.1, 1.2), team("top", 9, 9.1, 9.2), team("mid", 4, 4.1, 4.2));
        assertThat(standings)
                .extracting(Standing::place)
                .containsExactly(new Place(1, 1, 1, 1.0), new Place(2, 2, 2, 1.0), new Place(3, 3, 3, null));
    }

    /** 1 % each on its own: the difference is known to 1.41 %, and 97.5 % of a normal curve lie above -1.96 of that: 2.77 %. */
    @Test
    void sharesAPlaceWhereTooFewTrialsTellTeamsApart() {
        assertThat(places(rank(team("a", 1.025), team("b", 1.0)))).containsExactly(1, 1);
        assertThat(places(rank(team("a", 1.031), team("b", 1.0)))).containsExactly(1, 2);
    }

    @Test
    void doesNotChainSmallStepsIntoOneSharedPlace() {
        assertThat(places(rank(team("a", 1.04), team("b", 1.02), team("c", 1.0), team("d", 0.5))))
                .containsExactly(1, 1, 3, 4);
    }

    /** Both 30 % uncertain, all of it from one lamp: the ratio is as good as certain. */
    @Test
    void tellsTeamsApartThatShareTheirLargestUncertainty() {
        var one = counts(1.2, normal("lamp", 1.2, 0.36), Verification.NOT_READ_AGAIN);
        var shared = counts(1.0, normal("lamp", 1.0, 0.3), Verification.NOT_READ_AGAIN);
        var alone = counts(1.0, normal("another lamp", 1.0, 0.3), Verification.NOT_READ_AGAIN);
        assertThat(places(rank(team("a", one), team("b", shared)))).containsExactly(1, 2);
        assertThat(places(rank(team("a", one), team("b", alone)))).containsExactly(1, 1);
    }

    @Test
    void putsAnyWorkingCellClearlyAboveNone() {
        var faint = counts(1e-6, Trials.certain(1e-9, Teams.TRIALS), Verification.NOT_READ_AGAIN);
        assertThat(places(rank(team("faint", faint), team("broke", failed(), failed(), failed()))))
                .containsExactly(1, 2);
    }

    @Test
    void sharesTheLastPlaceAmongTeamsWithZero() {
        assertThat(places(rank(team("a", failed(), failed(), failed()), team("b", failed(), failed(), failed()))))
                .containsExactly(1, 1);
    }

    @Test
    void hasNothingToRankWithoutTeams() {
        assertThat(rank()).isEmpty();
    }
}
