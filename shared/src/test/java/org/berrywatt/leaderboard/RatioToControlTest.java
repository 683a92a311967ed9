package org.berrywatt.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.berrywatt.leaderboard.Readings.DEVIATES;
import static org.berrywatt.leaderboard.Readings.beside;
import static org.berrywatt.leaderboard.Readings.swept;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RatioToControlTest {

    /** 200 µA and 100 µA with all else alike: 2. */
    @Test
    void dividesByTheControlCell() {
        assertThat(found(swept("cell", 200e-6), swept("control", 100e-6)).value())
                .isCloseTo(2, within(1e-9));
    }

    @Test
    void givesTheControlCellItselfOneForCertain() {
        var control = swept("control", 100e-6);
        var one = found(control, control);
        assertThat(one.value()).isEqualTo(1);
        assertThat(one.interval().low()).isEqualTo(1);
        assertThat(one.interval().high()).isEqualTo(1);
    }

    /** What is one light's for both cells cancels: a light known to 10 % in place of 1 % hardly shows in the ratio. */
    @Test
    void doesNotCareHowWellTheLightIsKnown() {
        var sharp = found(swept("cell", 200e-6), swept("control", 100e-6));
        var blurred = found(swept("cell", 200e-6, 0.1), swept("control", 100e-6, 0.1));
        assertThat(swept("cell", 200e-6, 0.1).powerDensity().estimate().relativeUncertainty())
                .isGreaterThan(0.12);
        assertThat(blurred.estimate().relativeUncertainty())
                .isCloseTo(sharp.estimate().relativeUncertainty(), withinPercentage(5));
    }

    /**
     * By hand (JCGM 100:2008, 5.1.6): clips 6 %, area 5 %, current 1 %, voltage 1 % and fill factor 2 % of each cell are its
     * own: √2 · √(0.06² + 0.05² + 0.01² + 0.01² + 0.02²) = 11.6 %; a normal quotient's tails add a little, and temperature.
     */
    @Test
    void keepsWhatIsEachCellsOwn() {
        var ratio = found(swept("cell", 200e-6), swept("control", 100e-6));
        assertThat(ratio.estimate().relativeUncertainty()).isBetween(0.11, 0.13);
    }

    @Test
    void asksForAControlCell() {
        assertThat(new RatioToControl().score(beside(swept("cell", 1e-4), null, null), DEVIATES))
                .isEqualTo(new Score.Missing(Obstacle.NO_CONTROL));
    }

    @Test
    void asksToReadTheControlCellAtThisStation() {
        assertThat(score(swept("cell", 1e-4), null)).isEqualTo(new Score.Missing(Obstacle.CONTROL_NOT_READ));
    }

    @Test
    void asksForAStrongerControlCellWhenItsPowerMayBeNothing() {
        var power = new Score.Found(
                swept("control", 1e-4).powerDensity().estimate(),
                Trials.certain(0, DEVIATES.trials()),
                swept("control", 1e-4).powerDensity().interval());
        var faint =
                new EvaluatedReading(Teams.id("control"), swept("control", 1e-4).result(), power);
        assertThat(score(swept("cell", 1e-4), faint)).isEqualTo(new Score.Missing(Obstacle.CONTROL_TOO_FAINT));
    }

    private static Score.Found found(EvaluatedReading cell, EvaluatedReading control) {
        return (Score.Found) score(cell, control);
    }

    private static Score score(EvaluatedReading cell, @Nullable EvaluatedReading control) {
        return new RatioToControl().score(beside(cell, new MeasuredCell.Control(control), null), DEVIATES);
    }
}
