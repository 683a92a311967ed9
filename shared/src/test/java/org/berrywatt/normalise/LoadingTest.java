package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadingTest {

    @ParameterizedTest
    @CsvSource({
        // single-diode cells behind a current range, own calculation of the trade notes: true Isc, Voc, range, part
        // shown
        "0.99e-3, 0.39, 100,   0.975",
        "0.99e-3, 0.39, 1_000, 0.35",
        "91e-6,   0.36, 1_000, 0.89"
    })
    void holdsTheTrueCurrent(double trueA, double voltageV, String ohm, double partShown) {
        var spot = new SpotReading(
                Measured.shown(trueA * partShown),
                Measured.shown(voltageV),
                Double.parseDouble(ohm.replace("_", "")),
                Double.POSITIVE_INFINITY);
        assertThat(1 / partShown).isBetween(1.0, Loading.ofCurrent(spot).widestFactor());
    }

    @Test
    void isExactForAStraightCell() {
        // a line from 1 mA to 0.5 V through 100 Ω: V = I R gives I = 1 mA · 500 / 600
        var spot =
                new SpotReading(Measured.shown(1e-3 * 500 / 600), Measured.shown(0.5), 100, Double.POSITIVE_INFINITY);
        assertThat(spot.currentA().value() * Loading.ofCurrent(spot).widestFactor())
                .isCloseTo(1e-3, within(1e-15));
    }

    @Test
    void staysFiniteWhereTheRangeTakesAllOfTheVoltage() {
        var spot = new SpotReading(Measured.shown(1e-3), Measured.shown(0.5), 10_000, Double.POSITIVE_INFINITY);
        assertThat(Loading.ofCurrent(spot).widestFactor()).isCloseTo(10, within(1e-12));
    }

    @Test
    void isNotedAboveATwentiethOfTheVoltage() {
        var noted = new SpotReading(Measured.shown(100e-6), Measured.shown(0.4), 1_000, Double.POSITIVE_INFINITY);
        var fine = new SpotReading(Measured.shown(100e-6), Measured.shown(0.4), 100, Double.POSITIVE_INFINITY);
        assertThat(Normalisation.of(
                                Measured.cell(noted, null, Measured.AREA, Measured.sunlight(100)), Measured.REFERENCE)
                        .notes())
                .extracting(Note::key)
                .contains("note.burden");
        assertThat(Normalisation.of(
                                Measured.cell(fine, null, Measured.AREA, Measured.sunlight(100)), Measured.REFERENCE)
                        .notes())
                .extracting(Note::key)
                .doesNotContain("note.burden");
    }
}
