package org.berrywatt.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.berrywatt.leaderboard.Readings.DEVIATES;
import static org.berrywatt.leaderboard.Readings.alone;
import static org.berrywatt.leaderboard.Readings.swept;

import org.junit.jupiter.api.Test;

/** Figures of one cell, worked by hand: 100 µA, 0.4 V, fill factor 0.5, 2 cm², read in the reference light of 100 W/m². */
class ReferenceMetricsTest {
    private static final MeasuredCell CELL = alone(swept("cell", 100e-6));

    /** 100 µA / 2 cm² = 0.5 A/m²; times 0.4 V times 0.5. */
    @Test
    void ranksByPowerPerArea() {
        assertThat(found(new PowerDensity()).value()).isCloseTo(0.1, within(1e-9));
    }

    @Test
    void ranksByCurrentPerArea() {
        assertThat(found(new CurrentDensity()).value()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void ranksByVoltage() {
        assertThat(found(new OpenCircuitVoltage()).value()).isCloseTo(0.4, within(1e-9));
    }

    /** The current carries the area, 5 %; the voltage does not. */
    @Test
    void doesNotBlameTheAreaForTheVoltage() {
        assertThat(relative(new CurrentDensity())).isGreaterThan(Readings.AREA_UNCERTAINTY);
        assertThat(relative(new OpenCircuitVoltage())).isLessThan(Readings.AREA_UNCERTAINTY);
    }

    /** 100 µA · 0.4 V · 0.5 = 20 µW of the 100 W/m² · 2 cm² = 20 mW on it: 0.1 %, give or take what the lamp's total has. */
    @Test
    void ranksByEfficiencyAsMeasured() {
        var efficiency = found(new EfficiencyAsMeasured());
        assertThat(efficiency.value()).isCloseTo(1e-3, within(1e-6));
        assertThat(efficiency.interval().contains(1e-3)).isTrue();
    }

    @Test
    void comparesEfficienciesOfOneStationOnly() {
        var elsewhere = new MeasuredCell(CELL.now(), "window", "yard", null, null);
        assertThat(new EfficiencyAsMeasured().score(elsewhere, DEVIATES))
                .isEqualTo(new Score.Missing(Obstacle.OTHER_STATION));
    }

    @Test
    void countsACellThatWorksAsOneForCertain() {
        var yield = found(new Yield());
        assertThat(yield.value()).isEqualTo(1);
        assertThat(yield.interval().width()).isZero();
    }

    private static double relative(Metric metric) {
        return found(metric).estimate().relativeUncertainty();
    }

    private static Score.Found found(Metric metric) {
        return (Score.Found) metric.score(CELL, DEVIATES);
    }
}
