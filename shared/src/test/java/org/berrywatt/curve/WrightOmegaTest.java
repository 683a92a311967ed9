package org.berrywatt.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WrightOmegaTest {
    private static final double SEVEN_DIGITS = 1e-7;

    /** Any w solves the equation of u = w + ln w; omega(0) is the omega constant (OEIS A030178). */
    @ParameterizedTest
    @CsvSource({"1, 1", "0, 0.567143290409783873", "2.6931471805599453, 2", "3.718281828459045, 2.718281828459045"})
    void isKnownWhereTheEquationIsSolvedByHand(double u, double expected) {
        assertThat(WrightOmega.near(u)).isCloseTo(expected, within(SEVEN_DIGITS * expected));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-700, -30, -2.001, -1.999, -1, 0.3, 3.14, 3.15, 10, 1e3, 1e8, 1e100})
    void solvesItsEquation(double u) {
        double w = WrightOmega.near(u);
        double remainder = u - w - Math.log(w);
        assertThat(remainder / (1 + w)).isCloseTo(0, within(SEVEN_DIGITS));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-800, Double.NEGATIVE_INFINITY})
    void isNothingFarBelow(double u) {
        assertThat(WrightOmega.near(u)).isZero();
    }
}
