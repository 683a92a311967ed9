package org.berrywatt.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A few simulated days; {@code deploy/validate.sh} plays five hundred. Limits are as wide as so few days need. */
class CalibrationTest {
    private static final int DAYS = 30;

    private static Calibration days;

    @BeforeAll
    static void playDays() {
        days = Calibration.ofDays(DAYS);
    }

    @Test
    void holdsTheTruthOfCellsWhoseStationsAreOffTogether() {
        assertThat(days.cells(ReadCell::swept).part()).isBetween(0.90, 0.99);
    }

    @Test
    void holdsTheTruthWithoutASweep() {
        assertThat(days.cells(cell -> !cell.swept()).part()).isGreaterThan(0.93);
    }

    @ParameterizedTest
    @ValueSource(doubles = {15, 1000})
    void holdsTheTruthFarFromTheLightOfTheStations(double referenceWm2) {
        var far = Calibration.ofDays(8, referenceWm2);
        assertThat(far.cells(cell -> true).part()).isGreaterThan(0.92);
    }

    @Test
    void holdsTheDifferenceOfTwoCellsOfOneStationAndSharpensIt() {
        assertThat(days.differences(ReadCell::swept).part()).isBetween(0.93, 1.0);
        assertThat(days.sharpening(ReadCell::swept)).isLessThan(0.9);
    }

    @Test
    void holdsTheTruePlaceOfATeam() {
        assertThat(days.places().part()).isGreaterThan(0.93);
    }

    @Test
    void isAboveAboutAsOftenAsItSays() {
        assertThat(came(0.5, 0.75)).isBetween(0.5, 0.8);
        assertThat(came(0.9, 1.01)).isGreaterThan(0.9);
    }

    private static double came(double from, double below) {
        return Share.of(days.chances(from, below).stream().map(StatedChance::above))
                .part();
    }
}
