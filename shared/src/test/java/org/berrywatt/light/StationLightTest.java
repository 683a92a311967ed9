package org.berrywatt.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;

class StationLightTest {
    private static final Instant NINE = Instant.parse("2026-05-12T09:00:00Z");
    private static final TimedReading AT_NINE = new TimedReading(NINE, new Estimate(1_000, 10));
    private static final TimedReading AT_TEN = new TimedReading(NINE.plusSeconds(3_600), new Estimate(1_200, 12));
    private static final List<TimedReading> BOTH = List.of(AT_NINE, AT_TEN);

    @Test
    void showsTheReadingAtItsOwnInstant() {
        var light = StationLight.at(Lamp.COOL_LED, BOTH, AT_TEN.at());
        assertThat(light.raw()).isEqualTo(AT_TEN.raw());
        assertThat(light.age()).isZero();
        assertThat(light.stale()).isFalse();
    }

    @Test
    void runsLinearlyBetweenTwoReadings() {
        var light = StationLight.at(Lamp.COOL_LED, BOTH, minutes(15));
        assertThat(light.raw().value()).isCloseTo(1_050, within(1e-9));
        assertThat(light.age()).isEqualTo(Duration.ofMinutes(15));
        assertThat(light.stale()).isFalse();
    }

    @Test
    void isLeastSureMidwayBetweenTwoReadings() {
        var quarter = relativeAt(Lamp.COOL_LED, BOTH, 15);
        var half = relativeAt(Lamp.COOL_LED, BOTH, 30);
        assertThat(half).isGreaterThan(quarter);
        assertThat(quarter).isGreaterThan(relativeAt(Lamp.COOL_LED, BOTH, 60));
    }

    @Test
    void holdsTheLastReadingWhileItsUncertaintyGrows() {
        var soon = StationLight.at(Lamp.HALOGEN, BOTH, minutes(70));
        var later = StationLight.at(Lamp.HALOGEN, BOTH, minutes(100));
        assertThat(soon.raw().value()).isEqualTo(1_200);
        assertThat(later.raw().value()).isEqualTo(1_200);
        assertThat(later.raw().standardUncertainty()).isGreaterThan(soon.raw().standardUncertainty());
        assertThat(soon.raw().standardUncertainty()).isGreaterThan(12);
    }

    @Test
    void holdsTheFirstReadingBackwards() {
        var before = StationLight.at(Lamp.HALOGEN, BOTH, minutes(-10));
        assertThat(before.raw().value()).isEqualTo(1_000);
        assertThat(before.raw().standardUncertainty()).isGreaterThan(10);
        assertThat(before.stale()).isFalse();
    }

    @Test
    void turnsStaleSoonerByTheWindowThanUnderALed() {
        assertThat(StationLight.at(Lamp.WINDOW, BOTH, minutes(60 + 21)).stale()).isTrue();
        assertThat(StationLight.at(Lamp.WINDOW, BOTH, minutes(60 + 20)).stale()).isFalse();
        assertThat(StationLight.at(Lamp.COOL_LED, BOTH, minutes(60 + 60)).stale())
                .isFalse();
        assertThat(StationLight.at(Lamp.COOL_LED, BOTH, minutes(60 + 61)).stale())
                .isTrue();
    }

    @Test
    void trustsAStationThatKeptStillMoreThanOneThatWandered() {
        var still = List.of(AT_NINE, new TimedReading(AT_TEN.at(), new Estimate(1_001, 10)));
        assertThat(relativeAt(Lamp.HALOGEN, still, 90)).isLessThan(relativeAt(Lamp.HALOGEN, BOTH, 90));
    }

    @Test
    void growsByTheHabitOfItsLampAfterASingleReading() {
        // one hour after a single exact reading of a halogen lamp: 5 % by the drift stated for its kind
        var single = List.of(new TimedReading(NINE, Estimate.exact(1_000)));
        assertThat(relativeAt(Lamp.HALOGEN, single, 60)).isCloseTo(0.05, within(1e-12));
        assertThat(relativeAt(Lamp.HALOGEN, single, 15)).isCloseTo(0.025, within(1e-12));
    }

    @Test
    void doesNotCareAboutTheOrderOfReadings() {
        assertThat(StationLight.at(Lamp.WINDOW, List.of(AT_TEN, AT_NINE), minutes(25)))
                .isEqualTo(StationLight.at(Lamp.WINDOW, BOTH, minutes(25)));
    }

    @Test
    void staysFiniteWithTwoReadingsAtOneInstant() {
        var twice = List.of(AT_NINE, new TimedReading(NINE, new Estimate(1_020, 10)));
        assertThat(StationLight.at(Lamp.WINDOW, twice, NINE).raw().value()).isBetween(1_000.0, 1_020.0);
        assertThat(StationLight.at(Lamp.WINDOW, twice, minutes(1)).raw().standardUncertainty())
                .isFinite();
    }

    @Test
    void refusesAStationWithoutReadings() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StationLight.at(Lamp.WINDOW, List.of(), NINE))
                .withMessageContaining("at least one reading");
    }

    @Test
    void refusesALightReadingThatIsNotAboveZero() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TimedReading(NINE, Estimate.exact(0)))
                .withMessageContaining("(0, infinity)");
    }

    private static double relativeAt(Lamp lamp, List<TimedReading> readings, long minutes) {
        return StationLight.at(lamp, readings, minutes(minutes)).raw().relativeUncertainty();
    }

    private static Instant minutes(long afterNine) {
        return NINE.plus(Duration.ofMinutes(afterNine));
    }
}
