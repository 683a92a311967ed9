package org.berrywatt.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.berrywatt.statistics.Resampling;
import org.junit.jupiter.api.Test;

class EffectTest {

    @Test
    void isThePairedComparisonOfLogarithms() {
        // R. A. Fisher, The Design of Experiments (1935), chapter 3: Darwin's 15 pairs of maize, differences in eighths
        // of an
        // inch; mean 20.933, standard error 9.746, Student's t for 14 degrees of freedom at 95 % 2.145
        double[] differences = {49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48};
        SchoolClass pairs = SchoolClass.empty();
        for (int i = 0; i < differences.length; i++) {
            pairs.cell("t" + i, Math.exp(0.1 * i), Map.of("it", "crossed"));
            pairs.cell("t" + i, Math.exp(0.1 * i - differences[i] / 100), Map.of("it", "selfed"));
        }
        Effect effect = pairs.finding().effect().orElseThrow().upwards();
        assertThat(effect.toLevel()).isEqualTo("crossed");
        assertThat(100 * Math.log(effect.ratio())).isCloseTo(20.933, within(5e-4));
        assertThat(100 * Math.log(effect.low())).isCloseTo(20.933 - 2.145 * 9.746, within(0.01));
        assertThat(100 * Math.log(effect.high())).isCloseTo(20.933 + 2.145 * 9.746, within(0.01));
    }

    @Test
    void knowsTheSmallestRatioOfTwoGroupsOfFour() {
        // Student's t for 6 degrees of freedom: 2.447 at 97.5 %, 0.906 at 80 %; error s sqrt(2/4), here s = 1 by
        // construction
        double[] z = {-1, -1, 1, 1};
        double unit = Math.sqrt(6.0 / 8);
        SchoolClass cells = SchoolClass.empty();
        for (int i = 0; i < 4; i++) {
            cells.cell("a" + i, Math.exp(unit * z[i]), Map.of("it", "elder"));
            cells.cell("b" + i, Math.exp(unit * z[i]), Map.of("it", "sloe"));
        }
        Effect effect = cells.finding().effect().orElseThrow();
        assertThat(effect.spread()).isCloseTo(1, within(1e-12));
        assertThat(Math.log(effect.smallest())).isCloseTo((2.447 + 0.906) * Math.sqrt(0.5), within(1e-3));
    }

    @Test
    void runsOverTheWholeRangeOfANumber() {
        SchoolClass cells = SchoolClass.empty();
        for (int i = 0; i < 9; i++) {
            int round = i / 3;
            cells.number(350 + 50 * (i % 3), "t" + i, Math.exp((i % 3) * 0.7 + 0.05 * round));
        }
        Effect effect = cells.finding().effect().orElseThrow();
        assertThat(effect.fromLevel()).isEqualTo("350");
        assertThat(effect.toLevel()).isEqualTo("450");
        // 0.7 for each of two steps, by construction
        assertThat(Math.log(effect.ratio())).isCloseTo(1.4, within(1e-9));
    }

    @Test
    void hasNoMedianIntervalOfAHandfulNorWithoutDraws() {
        assertThat(MedianInterval.of(new double[] {1, 2, 3, 4, 5}, Resampling.seeded(1)))
                .isEmpty();
        assertThat(MedianInterval.of(new double[] {1, 2, 3, 4, 5, 6}, Resampling.none()))
                .isEmpty();
        MedianInterval interval = MedianInterval.of(new double[] {1, 2, 3, 4, 5, 6, 7, 8}, Resampling.seeded(1))
                .orElseThrow();
        assertThat(interval.low()).isBetween(1.0, 4.5);
        assertThat(interval.high()).isBetween(4.5, 8.0);
    }
}
