package org.berrywatt.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
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
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BoardTest {

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
    void hasNothingToRankWithoutTeams() {
        assertThat(rank()).isEmpty();
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

    private static List<TeamCells> someTeams() {
        return List.of(
                team("a", counts("p", 2, 0.5), failed(), counts("q", 2, 0.1)),
                team("b", 2, 2.2, 1.9),
                team("c", waiting()),
                team("d", counts(2, normal("v", 2, 0.1), Verification.VERIFIED), certain(2)),
                team("e", failed(), failed(), failed()));
    }

    private static Terms terms(Count count, int cellsPerTeam, boolean entryOpen) {
        return new Terms(new Rule(Metric.POWER_DENSITY, count), cellsPerTeam, entryOpen, Teams.TRIALS);
    }

    private static List<Standing> rank(TeamCells... teams) {
        return Board.of(List.of(teams), terms(Count.MEDIAN, 3, true)).standings();
    }

    private static double figure(TeamCells team) {
        return figureOf(rank(team).get(0)).value();
    }

    private static TeamFigure figureOf(Standing standing) {
        return Objects.requireNonNull(standing.figure());
    }

    private static List<Integer> places(List<Standing> standings) {
        return standings.stream()
                .map(standing -> Objects.requireNonNull(standing.place()).number())
                .toList();
    }

    private static Place place(List<Standing> standings, String team) {
        return Objects.requireNonNull(standing(standings, team).place());
    }

    private static Standing standing(List<Standing> standings, String team) {
        UUID id = id(team);
        return standings.stream()
                .filter(it -> it.teamId().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static TeamCells shuffled(TeamCells team, Random random) {
        var cells = new ArrayList<>(team.cells());
        Collections.shuffle(cells, random);
        return new TeamCells(team.teamId(), cells);
    }
}
