package org.berrywatt.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BlackBodyTest {

    @Test
    void hasTheSecondRadiationConstantOfTheSi() {
        // CODATA 2018: hc/k = 1.438776877... e-2 m K, printed without rounding
        assertThat(Planck.H * Planck.C / Planck.K).isCloseTo(1.438776877e-2, within(1e-11));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1500, 2856, 5800})
    void shinesAsStefanAndBoltzmannSay(double temperatureK) {
        // CODATA 2018: sigma = 5.670374419e-8 W m-2 K-4; radiance over all wavelengths is sigma T^4 / pi.
        // Trapezoids in ln lambda from 30 nm to 3 m
        var steps = 20_000;
        var step = (Math.log(3e9) - Math.log(30)) / steps;
        var sum = IntStream.rangeClosed(0, steps)
                .mapToDouble(i -> 30 * Math.exp(i * step))
                .map(nm -> Planck.radiance(nm, temperatureK) * nm * step)
                .sum();
        assertThat(sum * Math.PI)
                .isCloseTo(5.670374419e-8 * Math.pow(temperatureK, 4), Percentage.withPercentage(1e-7));
    }

    @ParameterizedTest
    @ValueSource(doubles = {2000, 2856, 6500})
    void isBrightestWhereWienSays(double temperatureK) {
        // CODATA 2018: lambda T = 2.897771955e-3 m K
        var peakNm = 2.897771955e6 / temperatureK;
        var peak = Planck.radiance(peakNm, temperatureK);
        assertThat(peak).isGreaterThan(Planck.radiance(peakNm * 0.9999, temperatureK));
        assertThat(peak).isGreaterThan(Planck.radiance(peakNm * 1.0001, temperatureK));
    }

    @Test
    void hasTheEfficacyOfTheReferenceTableBehindGlass() {
        // computed with mpmath over 300 to 2500 nm: 2856 K 20.157342 lm/W
        var light = LampTable.of(BlackBody.behindGlass(2856)).efficacyLmPerW();
        assertThat(light.value()).isCloseTo(20.157342, within(1e-5));
        assertThat(light.standardUncertainty()).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {999, 20_001, Double.NaN})
    void refusesATemperatureThatNoLampHas(double temperatureK) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BlackBody.behindGlass(temperatureK))
                .withMessageContaining("[1000, 20000] K");
    }

    @Test
    void refusesAnEmptyBand() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BlackBody(3000, 500, 500))
                .withMessageContaining("500 to 500");
    }
}
