package org.berrywatt.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.berrywatt.leaderboard.Teams.counts;
import static org.berrywatt.leaderboard.Teams.failed;
import static org.berrywatt.leaderboard.Teams.id;
import static org.berrywatt.leaderboard.Teams.team;
import static org.berrywatt.leaderboard.Teams.waiting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import org.berrywatt.normalise.SharedUncertainty;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RankingTest {

    @Test
    void takesTheMedianOfTheDeclaredCellsWithFailuresAsZero() {
        assertThat(figure(team("a", counts(1, 0), counts(5, 0), counts(2, 0)))).isEqualTo(2);
        // a median of three tolerates one zero
        assertThat(figure(team("a", counts(4, 0), failed(), counts(2, 0)))).isEqualTo(2);
        assertThat(figure(team("a", counts(4, 0), failed(), failed()))).isZero();
    }

    @Test
    void takesTheMiddleOfTheTwoMiddleCellsOfFour() {
        var standing = Ranking.of(
                        List.of(team("a", counts(1, 0.1), counts(2, 0.3), counts(4, 0.4), counts(9, 1))),
                        Rule.MEDIAN_OF_DECLARED,
                        4,
                        true)
                .get(0);
        assertThat(estimate(standing).value()).isEqualTo(3);
        // JCGM 100, 5.1.2: half of each, independent: √(0.15² + 0.2²)
        assertThat(estimate(standing).standardUncertainty()).isCloseTo(0.25, within(1e-12));
    }

    @Test
    void takesTheBestCellOrTheMeanWhenTheRuleSaysSo() {
        var team = team("a", counts(1, 0), counts(6, 0), failed());
        assertThat(figure(team, Rule.BEST_CELL)).isEqualTo(6);
        assertThat(figure(team, Rule.MEAN_OF_DECLARED)).isCloseTo(7 / 3.0, within(1e-12));
    }

    @Test
    void leavesOutstandingCellsOutWhileEntryIsOpenAndCountsThemAsZeroOnceItIsClosed() {
        var team = team("a", counts(3, 0), waiting());
        var open = Ranking.of(List.of(team), Rule.MEDIAN_OF_DECLARED, 3, true).get(0);
        var closed =
                Ranking.of(List.of(team), Rule.MEDIAN_OF_DECLARED, 3, false).get(0);
        assertThat(estimate(open).value()).isEqualTo(3);
        assertThat(estimate(closed).value()).isZero();
        assertThat(open.outstanding()).isEqualTo(2);
        assertThat(open.counted()).isEqualTo(1);
        assertThat(open.failed()).isZero();
    }

    @Test
    void ranksATeamFromItsFirstResultOn() {
        var standings = rank(team("waits", waiting(), waiting()), team("works", counts(1, 0)), team("broke", failed()));
        assertThat(place(standings, "works")).isEqualTo(1);
        assertThat(standing(standings, "waits").place()).isNull();
        assertThat(standing(standings, "waits").powerDensityWm2()).isNull();
        assertThat(standing(standings, "broke").place()).isNull();
        assertThat(standings.get(0).teamId()).isEqualTo(id("works"));
    }

    @Test
    void ranksATeamWhoseCellsHaveAllFailedWithZero() {
        var standings = rank(team("broke", failed(), failed(), failed()), team("works", 1, 1, 1));
        assertThat(place(standings, "broke")).isEqualTo(2);
        assertThat(estimate(standing(standings, "broke")).value()).isZero();
    }

    @Test
    void putsClearlyDifferentTeamsOnPlacesOfTheirOwn() {
        var standings = rank(team("low", 1, 1.1, 1.2), team("top", 9, 9.1, 9.2), team("mid", 4, 4.1, 4.2));
        assertThat(places(standings)).containsExactly(1, 2, 3);
        assertThat(standings).extracting(Standing::placeLow).containsExactly(1, 2, 3);
        assertThat(standings).extracting(Standing::placeHigh).containsExactly(1, 2, 3);
    }

    @Test
    void sharesAPlaceWhereTheRatioCannotTellTeamsApart() {
        // 1 % each: the ratio is known to 1.41 %, 1.96 times that is 2.8 %
        assertThat(places(rank(team("a", 1.027), team("b", 1.0)))).containsExactly(1, 1);
        assertThat(places(rank(team("a", 1.029), team("b", 1.0)))).containsExactly(1, 2);
    }

    @Test
    void doesNotChainSmallStepsIntoOneSharedPlace() {
        var standings = rank(team("a", 1.04), team("b", 1.02), team("c", 1.0), team("d", 0.5));
        assertThat(places(standings)).containsExactly(1, 1, 3, 4);
        assertThat(standings).extracting(Standing::placeLow).containsExactly(1, 1, 2, 4);
        assertThat(standings).extracting(Standing::placeHigh).containsExactly(2, 3, 3, 4);
    }

    @Test
    void tellsTeamsApartThatShareTheirLargestUncertainty() {
        var lamp = new SharedUncertainty("instrument.luxMeter", -0.3);
        var brighter = new SharedUncertainty("instrument.luxMeter", -0.36);
        var apart = List.of(
                team("a", counts(1.2, Math.hypot(0.36, 0.012), brighter)),
                team("b", counts(1.0, Math.hypot(0.3, 0.01), lamp)));
        var alone =
                List.of(team("a", counts(1.2, Math.hypot(0.36, 0.012))), team("b", counts(1.0, Math.hypot(0.3, 0.01))));
        assertThat(places(Ranking.of(apart, Rule.BEST_CELL, 1, true))).containsExactly(1, 2);
        assertThat(places(Ranking.of(alone, Rule.BEST_CELL, 1, true))).containsExactly(1, 1);
    }

    @Test
    void keepsTheWholeUncertaintyInATeamsFigure() {
        var cell = counts(1.0, 0.5, new SharedUncertainty("station.x", 0.3), new SharedUncertainty("station.x", 0.1));
        assertThat(estimate(rank(team("a", cell)).get(0)).standardUncertainty()).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void putsAnyWorkingCellClearlyAboveNone() {
        var standings = rank(team("faint", counts(1e-6, 1e-6)), team("broke", failed(), failed(), failed()));
        assertThat(places(standings)).containsExactly(1, 2);
    }

    @Test
    void sharesTheLastPlaceAmongTeamsWithZero() {
        assertThat(places(rank(team("a", failed(), failed(), failed()), team("b", failed(), failed(), failed()))))
                .containsExactly(1, 1);
    }

    @ParameterizedTest
    @EnumSource
    void doesNotCareAboutTheOrderOfTeamsOrCells(Rule rule) {
        var teams = new ArrayList<>(List.of(
                team("a", counts(2, 0.5), failed(), counts(2, 0.1)),
                team("b", 2, 2.2, 1.9),
                team("c", waiting()),
                team("d", 2, 2, 2),
                team("e", failed(), failed(), failed())));
        var first = Ranking.of(teams, rule, 3, true);
        var random = new Random(5);
        for (int i = 0; i < 20; i++) {
            Collections.shuffle(teams, random);
            var shuffled = teams.stream().map(team -> shuffled(team, random)).toList();
            assertThat(Ranking.of(shuffled, rule, 3, true)).isEqualTo(first);
        }
    }

    @Test
    void hasNothingToRankWithoutTeams() {
        assertThat(rank()).isEmpty();
    }

    @Test
    void refusesANegativePowerDensity() {
        assertThatIllegalArgumentException().isThrownBy(() -> counts(-1, 0)).withMessageContaining("[0, ∞), not -1.0");
    }

    private static List<Standing> rank(TeamCells... teams) {
        return Ranking.of(List.of(teams), Rule.MEDIAN_OF_DECLARED, 3, true);
    }

    private static double figure(TeamCells team) {
        return figure(team, Rule.MEDIAN_OF_DECLARED);
    }

    private static double figure(TeamCells team, Rule rule) {
        return estimate(Ranking.of(List.of(team), rule, 3, true).get(0)).value();
    }

    private static Estimate estimate(Standing standing) {
        return Objects.requireNonNull(standing.powerDensityWm2());
    }

    private static List<Integer> places(List<Standing> standings) {
        return standings.stream()
                .map(standing -> Objects.requireNonNull(standing.place()))
                .toList();
    }

    private static int place(List<Standing> standings, String team) {
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
