package org.berrywatt.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShapeTest {

    /**
     * JCGM 100:2008: rectangular a/√3 = 0.577 a (4.3.7), triangular a/√6 = 0.408 a (4.3.9), and 0.35 °C for a swing of
     * ±0.5 °C (H.1.3.4, arcsine).
     */
    @ParameterizedTest
    @CsvSource({"NORMAL, 1, 1", "RECTANGULAR, 1, 0.5774", "TRIANGULAR, 1, 0.4082", "ARCSINE, 0.5, 0.3536"})
    void turnsHalfWidthIntoStandardUncertainty(Shape shape, double halfWidth, double expected) {
        assertThat(shape.standardUncertainty(halfWidth)).isCloseTo(expected, within(5e-5));
    }
}
