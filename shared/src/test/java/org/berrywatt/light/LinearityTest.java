package org.berrywatt.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.berrywatt.light.Linearity.Verdict;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected slopes and uncertainties are worked by hand from the definition, slope of ln I against ln G. */
class LinearityTest {

    @ParameterizedTest
    @CsvSource({"1.0, 0.01, HELD", "0.8, 0.01, BENT", "1.015, 0.0005, HELD", "1.0, 0.2, OPEN", "0.9, 0.1, OPEN"})
    void tellsWhetherTheCurrentFollowsTheLight(double exponent, double relative, Verdict verdict) {
        var linearity = Linearity.of(powerLaw(exponent, relative, 100, 300, 1000));
        assertThat(linearity.slope().value()).isCloseTo(exponent, within(1e-9));
        assertThat(linearity.verdict()).isEqualTo(verdict);
        assertThat(linearity.span()).isEqualTo(10);
    }

    @Test
    void knowsTheSlopeOfTwoReadings() {
        // two points: slope ln(1.9)/ln 2 = 0.92600, u = √2 · 1 % / ln 2 = 2.0402 %
        var linearity = Linearity.of(List.of(lit(200, 0, 50e-6, 0.01), lit(400, 0, 95e-6, 0.01)));
        assertThat(linearity.slope().value()).isCloseTo(0.92600, within(1e-5));
        assertThat(linearity.slope().standardUncertainty()).isCloseTo(0.020402, within(1e-6));
        assertThat(linearity.verdict()).isEqualTo(Verdict.BENT);
    }

    @Test
    void countsWhatTheLightIsUncertainBy() {
        // 10 % of light at either end over a factor 2: u = √2 · 10 % / ln 2 = 20.4 %
        var linearity = Linearity.of(List.of(lit(200, 0.1, 50e-6, 0), lit(400, 0.1, 95e-6, 0)));
        assertThat(linearity.slope().standardUncertainty()).isCloseTo(0.20402, within(1e-4));
        assertThat(linearity.verdict()).isEqualTo(Verdict.OPEN);
    }

    @Test
    void saysByHowMuchProportionMisses() {
        // I ~ G^0.8: at ten times the light 10^-0.2 = 0.631 of what proportion promises
        assertThat(Linearity.of(powerLaw(0.8, 0.01, 100, 1000)).missedAt(10)).isCloseTo(0.631, within(5e-4));
    }

    @Test
    void doesNotCareAboutOrderOrUnits() {
        var up = Linearity.of(powerLaw(0.9, 0.01, 100, 300, 900));
        var down = Linearity.of(powerLaw(0.9, 0.01, 0.9, 0.3, 0.1));
        assertThat(down.slope().value()).isCloseTo(up.slope().value(), within(1e-12));
        assertThat(down.verdict()).isEqualTo(up.verdict());
    }

    @Test
    void needsTwoDifferentLights() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Linearity.of(powerLaw(1, 0.01, 300, 300)))
                .withMessage("linearity needs one cell read at two different lights or more");
        assertThatIllegalArgumentException().isThrownBy(() -> Linearity.of(List.of()));
    }

    @Test
    void refusesACurrentThatIsNotAboveZero() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> lit(200, 0, 0, 0))
                .withMessage("photocurrent lies in (0, ∞) A, not 0.0");
    }

    private static List<LitCurrent> powerLaw(double exponent, double relative, double... lightsWm2) {
        return DoubleStream.of(lightsWm2)
                .mapToObj(light -> lit(light, 0, 1e-6 * Math.pow(light, exponent), relative))
                .toList();
    }

    private static LitCurrent lit(double lightWm2, double lightRelative, double currentA, double relative) {
        return new LitCurrent(
                new Estimate(lightWm2, lightWm2 * lightRelative), new Estimate(currentA, currentA * relative));
    }
}
