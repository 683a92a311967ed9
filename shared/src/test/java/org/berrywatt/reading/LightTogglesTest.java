package org.berrywatt.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.reading.LightToggles.Toggle;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shutter closed and open in turn, read to u = 0.1 µA; a response counts from 3 u on. Means and scatter by hand. */
class LightTogglesTest {

    @Test
    void meansTheChangesOfThreeOpenings() {
        // changes 40, 41, 39 µA: mean 40, s = 1, s/√3 = 0.577 µA
        var toggles = toggles(0, 40, 0, 41, 0, 39, 0);
        assertThat(toggles.response().value()).isCloseTo(40e-6, within(1e-12));
        assertThat(toggles.response().standardUncertainty()).isCloseTo(1e-6 / Math.sqrt(3), within(1e-12));
        assertThat(toggles.held()).isTrue();
    }

    @Test
    void cancelsASteadyDrift() {
        // a battery that climbs by 5 µA per reading adds nothing to a response of 10 µA
        var toggles = toggles(0, 15, 10, 25, 20, 35, 30);
        assertThat(toggles.response().value()).isCloseTo(10e-6, within(1e-12));
        assertThat(toggles.held()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "0, 40, 0, -40, 0, 40, true", // jumps either way
        "0, 0.1, 0, 0.1, 0, 0.1, true", // within the meter
        "0, 40, 0, 5, 0, 4, true" // once only
    })
    void doesNotHoldWithoutARepeatableResponse(
            double a, double b, double c, double d, double e, double f, boolean refused) {
        assertThat(toggles(a, b, c, d, e, f, 0).held()).isEqualTo(!refused);
    }

    @Test
    void holdsForSwappedLeadsAsWell() {
        var toggles = toggles(0, -40, 0, -41, 0, -39);
        assertThat(toggles.held()).isTrue();
        assertThat(toggles.response().value()).isNegative();
    }

    @Test
    void showsTheNumbersThatDecided() {
        assertThat(toggles(0, 40, 0, 41, 0, 39, 0).deciders())
                .extracting(Decider::key)
                .containsExactly("toggles", "toggleResponse", "toggleScatter");
        assertThat(toggles(0, 40, 0, 41, 0, 39, 0).deciders().get(2).value()).isCloseTo(1 / 40.0, within(1e-9));
    }

    @Test
    void takesRepeatedReadingsOfOneStateAsOne() {
        var series = List.of(off(0), off(0), on(39), on(40), off(0), on(40), off(0), on(40), off(0));
        assertThat(LightToggles.of(series, DarkThresholds.usual()).response().value())
                .isCloseTo(40e-6, within(1e-12));
    }

    @Test
    void needsThreeOpenings() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> toggles(0, 40, 0, 40, 0))
                .withMessage(
                        "light toggles need the shutter opened [3, ∞) times, not 2; cover the cell, open, and repeat");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LightToggles.of(List.of(on(1), on(1), on(1)), DarkThresholds.usual()));
        assertThatIllegalArgumentException().isThrownBy(() -> LightToggles.of(List.of(), DarkThresholds.usual()));
    }

    private static LightToggles toggles(double... microamperes) {
        var series = IntStream.range(0, microamperes.length)
                .mapToObj(i -> i % 2 == 0 ? off(microamperes[i]) : on(microamperes[i]))
                .toList();
        return LightToggles.of(series, DarkThresholds.usual());
    }

    private static Toggle on(double microamperes) {
        return new Toggle(true, new Estimate(microamperes * 1e-6, 0.1e-6));
    }

    private static Toggle off(double microamperes) {
        return new Toggle(false, new Estimate(microamperes * 1e-6, 0.1e-6));
    }
}
