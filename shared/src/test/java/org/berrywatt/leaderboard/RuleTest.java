package org.berrywatt.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;

class RuleTest {
    private static final Trials TRIALS = Trials.certain(2, Teams.TRIALS);

    @Test
    void takesOnlyCellsThatSomebodyElseFoundAlike() {
        var best = new Rule(new PowerDensity(), Count.BEST_VERIFIED);
        assertThat(best.entry(candidate(Verification.of(2, List.of(2.29))))).isInstanceOf(CellEntry.Counts.class);
        assertThat(obstacle(best, Verification.of(2, List.of(2.31, Double.NaN))))
                .isEqualTo(Obstacle.READ_DIFFERENTLY);
        assertThat(obstacle(best, Verification.of(2, List.of()))).isEqualTo(Obstacle.NOT_READ_AGAIN);
    }

    /** The share of cells that work is a mean; nobody can read again what was left of an ageing cell. */
    @Test
    void refusesWaysOfCountingThatMakeNoSense() {
        assertThat(new Yield().counts()).containsExactly(Count.MEAN);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Rule(new Yield(), Count.MEDIAN))
                .withMessageContaining("medianOfDeclared makes no sense with yield");
        assertThatIllegalArgumentException().isThrownBy(() -> new Rule(new CurrentRetention(), Count.BEST_VERIFIED));
    }

    @Test
    void leavesOutACellWithoutAFigureAndSaysWhy() {
        var cell = new Candidate(Teams.id("cell"), new Score.Missing(Obstacle.NO_CONTROL), Verification.NOT_READ_AGAIN);
        var entry = new Rule(new RatioToControl(), Count.MEDIAN).entry(cell);
        assertThat(((CellEntry.Excluded) entry).obstacle()).isEqualTo(Obstacle.NO_CONTROL);
    }

    @Test
    void isFoundByItsKey() {
        assertThat(Rule.all())
                .allSatisfy(rule -> assertThat(Rule.of(rule.key())).isEqualTo(rule));
        assertThat(Rule.all())
                .extracting(Rule::key)
                .doesNotHaveDuplicates()
                .contains("ratioToControl.medianOfDeclared");
        assertThat(Rule.all().get(0)).isEqualTo(Rule.usual());
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
        return new Candidate(Teams.id("cell"), Score.Found.of(Estimate.exact(2), TRIALS), verification);
    }

    private static Obstacle obstacle(Rule rule, Verification verification) {
        return ((CellEntry.Excluded) rule.entry(candidate(verification))).obstacle();
    }
}
