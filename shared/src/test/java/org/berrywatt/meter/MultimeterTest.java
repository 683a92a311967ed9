package org.berrywatt.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MultimeterTest {

    private final Multimeter meter = Multimeter.classroom();

    /** 200 mV over the shunt at full scale and 1 to 5 Ω of fuse: about 1 kΩ on 200 µA (common practice, no source). */
    @ParameterizedTest
    @CsvSource({"91e-6, 0.1e-6, 1000", "0.99e-3, 1e-6, 100", "9.9e-3, 10e-6, 10", "99e-3, 100e-6, 1"})
    void burdensTheCellByTheShuntOfTheRange(double readingA, double resolutionA, double shuntOhm) {
        assertThat(meter.rangeOf(readingA, resolutionA).resistanceOhm()).isBetween(shuntOhm + 1, shuntOhm + 5);
    }

    @Test
    void tellsTheRangeByTheLastDigit() {
        assertThat(meter.rangeOf(0.09e-3, 10e-6).fullScaleA()).isEqualTo(20e-3);
        assertThat(meter.rangeOf(-40e-6, 0.1e-6).fullScaleA()).isEqualTo(200e-6);
    }

    @Test
    void takesTheLargestRangeForACurrentBeyondAll() {
        assertThat(meter.rangeOf(5, 0.01).fullScaleA()).isEqualTo(200e-3);
    }

    /** 10 MΩ on a source of 1 MΩ reads 0.909 of the voltage (voltage divider). */
    @Test
    void givesBackTheVoltageThatTheMeterTook() {
        assertThat(meter.unloadedVoltageV(0.909, 1e6)).isCloseTo(1, within(1e-3));
    }

    /**
     * Single-diode cells of the lab day's plans, computed apart from this code: 0.99 mA and 0.39 V reads 97.5 % through 100 Ω
     * and 35 % through 1 kΩ; 91 µA and 0.36 V reads 89 % through 1 kΩ. The bounds hold each true current.
     */
    @ParameterizedTest
    @CsvSource({"0.99e-3, 0.39, 0.975, 100", "0.99e-3, 0.39, 0.35, 1000", "91e-6, 0.36, 0.89, 1000"})
    void boundsTheShortCircuitCurrent(double trueA, double openCircuitV, double part, double rangeOhm) {
        CurrentRange range = new CurrentRange(2e-3, 1e-6, rangeOhm);
        Estimate bounded = range.shortCircuitCurrent(Estimate.exact(trueA * part), openCircuitV);
        double halfWidth = bounded.standardUncertainty() * Math.sqrt(3);
        assertThat(trueA).isBetween(bounded.value() - halfWidth * 1.001, bounded.value() + halfWidth);
    }

    /** A straight line from 1 mA to 0.5 V has 500 Ω; behind 100 Ω it reads 1 mA × 500/600. */
    @Test
    void reachesTheStraightLineAtTheUpperBound() {
        CurrentRange range = new CurrentRange(2e-3, 1e-6, 100);
        Estimate bounded = range.shortCircuitCurrent(Estimate.exact(1e-3 * 500 / 600), 0.5);
        double upper = bounded.value() + bounded.standardUncertainty() * Math.sqrt(3);
        assertThat(upper).isCloseTo(1e-3, Percentage.withPercentage(1e-9));
    }

    @Test
    void leavesAReadingWithoutVoltageAsItIs() {
        Estimate reading = new Estimate(40e-6, 1e-6);
        CurrentRange range = meter.rangeOf(40e-6, 0.1e-6);
        assertThat(range.shortCircuitCurrent(reading, 0)).isEqualTo(reading);
        assertThat(range.shortCircuitCurrent(reading, -0.3)).isEqualTo(reading);
        assertThat(range.shortCircuitCurrent(reading, Double.NaN)).isEqualTo(reading);
    }
}
