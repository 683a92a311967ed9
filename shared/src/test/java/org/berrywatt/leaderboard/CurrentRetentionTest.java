package org.berrywatt.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.berrywatt.leaderboard.Readings.DEVIATES;
import static org.berrywatt.leaderboard.Readings.beside;
import static org.berrywatt.leaderboard.Readings.spot;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class CurrentRetentionTest {

    /** 80 µA a day after 100 µA in the same light. */
    @Test
    void dividesTheLaterCurrentByTheSettledOne() {
        assertThat(found(80e-6, Duration.ofDays(1)).value()).isCloseTo(0.8, within(1e-9));
    }

    @Test
    void letsACellImprove() {
        assertThat(found(120e-6, Duration.ofHours(2)).value()).isCloseTo(1.2, within(1e-9));
    }

    /**
     * By hand (JCGM 100:2008, 5.1.6): clips 6 % and light 1 % of each reading, √2 · √(0.06² + 0.01²) = 8.6 %; temperature adds
     * a little. The area's 5 % is the same in both and cancels; drawn twice it would make √(0.086² + 2 · 0.05²) = 11 %.
     */
    @Test
    void sharesTheAreaOfTheTwoReadingsAndNotTheClips() {
        var kept = found(80e-6, Duration.ofDays(1)).estimate();
        assertThat(kept.relativeUncertainty()).isBetween(0.082, 0.095);
    }

    @Test
    void asksUntilTheCellHasSettled() {
        assertThat(new CurrentRetention().score(beside(spot("cell", 1e-4), null, null), DEVIATES))
                .isEqualTo(new Score.Missing(Obstacle.NOT_SETTLED));
    }

    @Test
    void asksForAReadingAnHourLater() {
        assertThat(score(80e-6, Duration.ofMinutes(59))).isEqualTo(new Score.Missing(Obstacle.NO_LATER_READING));
        assertThat(score(80e-6, Duration.ofMinutes(60))).isInstanceOf(Score.Found.class);
    }

    private static Score.Found found(double currentA, Duration age) {
        return (Score.Found) score(currentA, age);
    }

    private static Score score(double currentA, Duration age) {
        var settled = new MeasuredCell.Settled(spot("cell", 100e-6), age);
        return new CurrentRetention().score(beside(spot("cell", currentA), null, settled), DEVIATES);
    }
}
