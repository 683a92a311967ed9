package org.berrywatt.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import org.berrywatt.reading.Retention.Aged;
import org.berrywatt.reading.Retention.Lifetime;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;

/** T80 is the time to 80 % (ISOS protocols, Khenkin et al. 2020, from memory); parts are worked by hand. */
class RetentionTest {
    private static final Estimate SETTLED = new Estimate(50e-6, 1e-6);

    @Test
    void comparesLaterReadingsWithTheSettledOne() {
        var parts =
                Retention.of(SETTLED, List.of(aged(24, 42e-6), aged(1, 48e-6))).parts();
        assertThat(parts).extracting(Aged::age).containsExactly(Duration.ofHours(1), Duration.ofHours(24));
        assertThat(parts.get(0).value().value()).isCloseTo(0.96, within(1e-12));
        assertThat(parts.get(0).value().relativeUncertainty()).isCloseTo(Math.hypot(0.02, 0.01), within(1e-12));
    }

    @Test
    void neverGuessesALifetimeBeyondTheLastLook() {
        assertThat(Retention.of(SETTLED, List.of(aged(1, 48e-6), aged(24, 42e-6)))
                        .lifetime())
                .isEqualTo(new Lifetime.LongerThan(Duration.ofHours(24)));
    }

    @Test
    void knowsBetweenWhichLooksACellFellBelowEightyPerCent() {
        assertThat(Retention.of(SETTLED, List.of(aged(1, 48e-6), aged(24, 30e-6), aged(48, 45e-6)))
                        .lifetime())
                .isEqualTo(new Lifetime.Between(Duration.ofHours(1), Duration.ofHours(24)));
    }

    @Test
    void startsFromTheSettledReadingWhenTheFirstLookIsTooLate() {
        assertThat(Retention.of(SETTLED, List.of(aged(24, 30e-6))).lifetime())
                .isEqualTo(new Lifetime.Between(Duration.ZERO, Duration.ofHours(24)));
    }

    @Test
    void countsExactlyEightyPerCentAsStillAbove() {
        assertThat(Retention.of(Estimate.exact(1), List.of(new Aged(Duration.ofHours(1), Estimate.exact(0.8))))
                        .lifetime())
                .isEqualTo(new Lifetime.LongerThan(Duration.ofHours(1)));
    }

    @Test
    void refusesWhatHasNoStartOrNoEnd() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Retention.of(Estimate.exact(0), List.of(aged(1, 1e-6))))
                .withMessageContaining("(0, ∞)");
        assertThatIllegalArgumentException().isThrownBy(() -> Retention.of(SETTLED, List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> aged(0, 1e-6));
    }

    private static Aged aged(long hours, double currentA) {
        return new Aged(Duration.ofHours(hours), new Estimate(currentA, 0.01 * currentA));
    }
}
