package org.berrywatt.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class IdealFillFactorTest {

    @ParameterizedTest
    @CsvSource({
        // exact fill factors of an ideal diode by the Lambert function at 40 digits (mpmath), reference to Green 1981
        "5,  0.547499270996278",
        "10, 0.693633411860092",
        "15, 0.765268106810908",
        "20, 0.807955543911136",
        "23, 0.826313864176094",
        "25, 0.836555671554977"
    })
    void isExact(double normalisedVoltage, double exact) {
        assertThat(IdealFillFactor.at(normalisedVoltage)).isCloseTo(exact, within(1e-14));
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 12, 15, 20, 25, 40})
    void agreesWithGreensFormulaWhereItHolds(double v) {
        // Green, Solid-State Electronics 24 (1981) 788: FF0 = (v - ln(v + 0.72))/(v + 1), four digits for v above 10
        assertThat(IdealFillFactor.at(v)).isCloseTo((v - Math.log(v + 0.72)) / (v + 1), within(2e-4));
    }

    @Test
    void fallsToAQuarterForTinyVoltages() {
        // common practice, no source: a straight line has FF 0.25
        assertThat(IdealFillFactor.at(1e-6)).isCloseTo(0.25, within(1e-6));
    }

    @Test
    void staysBelowOneForHugeVoltages() {
        assertThat(IdealFillFactor.at(1e4)).isBetween(0.99, 1.0);
    }
}
