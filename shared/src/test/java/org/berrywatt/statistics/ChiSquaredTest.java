package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChiSquaredTest {

    /** Critical values of the upper tail: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4, to its three digits. */
    @ParameterizedTest
    @CsvSource({"1, 3.841, 0.05", "1, 6.635, 0.01", "2, 5.991, 0.05", "5, 11.070, 0.05", "10, 23.209, 0.01"})
    void agreesWithTheTableOfCriticalValues(int degreesOfFreedom, double critical, double chance) {
        assertThat(ChiSquared.beyond(degreesOfFreedom, critical)).isCloseTo(chance, within(chance * 2e-3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e3, 1e5, 1e9, 1e300})
    void isNothingFarOut(double seen) {
        assertThat(ChiSquared.beyond(1, seen)).isLessThan(1e-200);
    }
}
