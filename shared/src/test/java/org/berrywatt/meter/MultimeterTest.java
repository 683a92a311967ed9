package org.berrywatt.meter;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Percentage;
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

    @Test
    void estimatesVoltageAndCurrentByTheirOwnStatements() {
        double voltageHalfWidthV = 0.005 * 0.4 + 2 * 0.001;
        double currentHalfWidthA = 0.01 * 40e-6 + 2 * 0.1e-6;
        assertThat(meter.voltageV(0.4, 0.001).standardUncertainty())
                .isCloseTo(voltageHalfWidthV / Math.sqrt(3), Percentage.withPercentage(1e-9));
        assertThat(meter.currentA(40e-6, 0.1e-6).standardUncertainty())
                .isCloseTo(currentHalfWidthA / Math.sqrt(3), Percentage.withPercentage(1e-9));
    }
}
