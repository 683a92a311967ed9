package org.berrywatt.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;

class AccuracyStatementTest {

    /**
     * JCGM 100:2008, 4.3.7: all values within ±a alike, u = a/√3. By hand: ±(0.5 % + 2 digits) of 0.400 V is ±4 mV, u =
     * 2.309 mV.
     */
    @Test
    void turnsPercentAndDigitsIntoStandardUncertainty() {
        Estimate voltage = new AccuracyStatement(0.5, 2).estimate(0.400, 0.001);
        assertThat(voltage.value()).isEqualTo(0.400);
        assertThat(voltage.standardUncertainty()).isCloseTo(2.3094e-3, within(1e-7));
    }

    @Test
    void isAsUncertainBelowZeroAsAbove() {
        AccuracyStatement statement = new AccuracyStatement(1, 2);
        assertThat(statement.standardUncertainty(-0.4, 0.001)).isEqualTo(statement.standardUncertainty(0.4, 0.001));
    }

    @Test
    void keepsTheDigitsAtZero() {
        assertThat(new AccuracyStatement(1, 2).halfWidth(0, 0.1e-6)).isEqualTo(0.2e-6);
    }

    @Test
    void refusesStatementsThatNoMeterMakes() {
        assertThatThrownBy(() -> new AccuracyStatement(-1, 2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an accuracy statement has percent and digits in [0, 100], not ±(-1.0 % + 2.0 digits)");
        assertThatThrownBy(() -> new AccuracyStatement(1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
