package org.berrywatt.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class RuleTest {
    private static final Trials TRIALS = Trials.certain(2, Teams.TRIALS);

    @Test
    void takesOnlyCellsThatSomebodyElseFoundAlike() {
        var best = new Rule(Metric.POWER_DENSITY, Count.BEST_VERIFIED);
        assertThat(best.entry(candidate(Verification.of(2, List.of(2.29))), "yard"))
                .isInstanceOf(CellEntry.Counts.class);
        assertThat(obstacle(best, Verification.of(2, List.of(2.31, Double.NaN))))
                .isEqualTo(Obstacle.READ_DIFFERENTLY);
        assertThat(obstacle(best, Verification.of(2, List.of()))).isEqualTo(Obstacle.NOT_READ_AGAIN);
    }

    @Test
    void comparesEfficienciesAsMeasuredWithinOneStationOnly() {
        var rule = new Rule(Metric.EFFICIENCY_AS_MEASURED, Count.MEDIAN);
        var cell = candidate(Verification.NOT_READ_AGAIN);
        assertThat(rule.entry(cell, "yard")).isInstanceOf(CellEntry.Counts.class);
        assertThat(((CellEntry.Excluded) rule.entry(cell, "window")).obstacle()).isEqualTo(Obstacle.OTHER_STATION);
    }

    @Test
    void takesYieldAsTheShareOfDeclaredCells() {
        assertThat(new Rule(Metric.YIELD, Count.MEDIAN).count()).isEqualTo(Count.MEAN);
    }

    @Test
    void isFoundByItsKey() {
        assertThat(Rule.offered())
                .allSatisfy(rule -> assertThat(Rule.of(rule.key())).isEqualTo(rule));
        assertThat(Rule.offered().get(0)).isEqualTo(Rule.usual());
    }

    /** Geometric standard deviation of 1 and e², of which the logarithms 0 and 2 deviate by √2: e^√2. */
    @Test
    void tellsWhatElseATeamMayBeProudOf() {
        var verified = Teams.counts(Math.exp(2), TRIALS, Verification.VERIFIED);
        var team = Teams.team("a", Teams.certain(1), verified, Teams.failed());
        var side = SideFigures.of(team, 4);
        assertThat(side.working()).isEqualTo(2);
        assertThat(side.declared()).isEqualTo(4);
        assertThat(Objects.requireNonNull(side.geometricDeviation())).isCloseTo(Math.exp(Math.sqrt(2)), within(1e-12));
        assertThat(side.bestVerifiedCell()).isEqualTo(verified.cellId());
        assertThat(side.bestVerified()).isEqualTo(Math.exp(2));
    }

    private static Candidate candidate(Verification verification) {
        return new Candidate(Teams.id("cell"), 2, TRIALS, "yard", verification);
    }

    private static Obstacle obstacle(Rule rule, Verification verification) {
        return ((CellEntry.Excluded) rule.entry(candidate(verification), "yard")).obstacle();
    }
}
