package org.berrywatt.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SmallLampTest {
    private final SmallLamp lamp = new SmallLamp(0.03);

    @ParameterizedTest
    @CsvSource({
        // inverse-square law by hand: half as far, four times the light; 51 for 50 cm, 3.9 % less
        "0.50, 0.25, 4.0",
        "0.50, 1.00, 0.25",
        "0.50, 0.51, 0.961169",
        "0.20, 0.20, 1.0"
    })
    void thinsOutWithTheSquareOfTheDistance(double readAtM, double wantedM, double factor) {
        assertThat(lamp.at(Estimate.exact(2_000), Estimate.exact(readAtM), Estimate.exact(wantedM))
                        .value())
                .isCloseTo(2_000 * factor, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({"0.20, 0.10", "0.50, 0.04"})
    void carriesTwiceTheUncertaintyOfTheDistance(double distanceM, double relative) {
        // common practice, no source: 1 cm at 20 cm is 10 % of the light, at 50 cm 4 %
        var moved =
                new SmallLamp(1e-6).at(Estimate.exact(1_000), new Estimate(distanceM, 0.01), Estimate.exact(distanceM));
        assertThat(moved.relativeUncertainty()).isCloseTo(relative, within(1e-9));
    }

    @Test
    void isRightToOnePerCentFromFiveDiametersOn() {
        // textbook: a disc of radius r has E = pi L r²/(r² + d²) on its axis
        var radius = lamp.diameterM() / 2;
        var near = lamp.nearestM();
        var disc = (radius * radius + 1) / (radius * radius + near * near);
        var carried = lamp.at(Estimate.exact(1), Estimate.exact(1), Estimate.exact(near));
        assertThat(carried.value() / disc).isBetween(1.0, 1.0101);
        assertThat(Math.abs(carried.value() - disc)).isLessThan(2 * carried.standardUncertainty());
    }

    @Test
    void leavesTheReadingAloneWhereItWasTaken() {
        var reading = new Estimate(900, 20);
        assertThat(lamp.at(reading, Estimate.exact(0.4), Estimate.exact(0.4))).isEqualTo(reading);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.149, 0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesToGoNearerThanFiveDiameters(double distanceM) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> lamp.at(Estimate.exact(1), Estimate.exact(0.5), Estimate.exact(distanceM)));
    }

    @Test
    void saysHowFarIsFarEnough() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> lamp.at(Estimate.exact(1), Estimate.exact(0.1), Estimate.exact(1)))
                .withMessage(
                        "the inverse-square law holds from five diameters on, in [0.15, ∞) m, not at 0.1 m; read the"
                                + " light where the cell lies instead");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, Double.NaN})
    void refusesALampWithoutSize(double diameterM) {
        assertThatIllegalArgumentException().isThrownBy(() -> new SmallLamp(diameterM));
    }
}
