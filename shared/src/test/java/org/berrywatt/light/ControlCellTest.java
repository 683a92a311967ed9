package org.berrywatt.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;

/** Expected values are worked by hand; relative uncertainties of a quotient add in quadrature (JCGM 100:2008, 5.1.6). */
class ControlCellTest {
    private static final Instant NINE = Instant.parse("2026-05-12T09:00:00Z");

    @Test
    void comparesACellWithTheControlOfItsPlaceAndHour() {
        var ratio = ControlCell.ratio(new Estimate(60e-6, 1.8e-6), new Estimate(80e-6, 3.2e-6));
        assertThat(ratio.value()).isCloseTo(0.75, within(1e-12));
        assertThat(ratio.relativeUncertainty()).isCloseTo(0.05, within(1e-12)); // 3 % and 4 %
    }

    @Test
    void keepsTheRatioOfADeadCellFinite() {
        var ratio = ControlCell.ratio(new Estimate(0, 1e-6), Estimate.exact(1e-4));
        assertThat(ratio.value()).isZero();
        assertThat(ratio.standardUncertainty()).isCloseTo(0.01, within(1e-12));
    }

    @Test
    void refusesAControlThatGaveNothing() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ControlCell.ratio(Estimate.exact(1), Estimate.exact(0)))
                .withMessageContaining("(0, ∞)");
    }

    @Test
    void tellsHowALampFades() {
        // 5 % less in every half hour is ln 0.95 / 0.5 h = -0.10259 per hour
        var drift = ControlCell.driftPerHour(List.of(read(0, 100), read(30, 95), read(60, 90.25), read(90, 85.7375)));
        assertThat(drift.value()).isCloseTo(-0.10259, within(1e-5));
        assertThat(drift.standardUncertainty()).isGreaterThan(0);
    }

    @Test
    void tellsTheSameDriftInAnyOrder() {
        assertThat(ControlCell.driftPerHour(List.of(read(60, 90.25), read(0, 100)))
                        .value())
                .isCloseTo(-0.10259, within(1e-5));
    }

    @Test
    void needsTwoInstantsForADrift() {
        assertThatIllegalArgumentException().isThrownBy(() -> ControlCell.driftPerHour(List.of(read(0, 100))));
        assertThatIllegalArgumentException().isThrownBy(() -> ControlCell.driftPerHour(List.of()));
    }

    @Test
    void agreesWithAMeterThatSawTheSameChange() {
        // meter halves, control falls to 0.48: |ln 0.96| = 4.08 % against 2 · √(4 · 1 %²) = 4 %
        assertThat(agreement(0.50).agrees()).isTrue();
        assertThat(agreement(0.50).score()).isZero();
        assertThat(agreement(0.48).score()).isCloseTo(0.0408 / 0.04, within(0.005));
        assertThat(agreement(0.48).agrees()).isFalse();
        assertThat(agreement(0.60).agrees()).isFalse();
    }

    private static ControlCell.Agreement agreement(double currentRatio) {
        return ControlCell.agreement(lit(800, 100e-6), lit(400, 100e-6 * currentRatio));
    }

    private static LitCurrent lit(double lightWm2, double currentA) {
        return new LitCurrent(new Estimate(lightWm2, 0.01 * lightWm2), new Estimate(currentA, 0.01 * currentA));
    }

    private static ControlReading read(long minutes, double microamperes) {
        return new ControlReading(
                NINE.plus(Duration.ofMinutes(minutes)), new Estimate(microamperes * 1e-6, microamperes * 1e-8));
    }
}
