package org.berrywatt.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;
import org.berrywatt.reading.Settling.Method;
import org.berrywatt.reading.Settling.State;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected values follow from x(t) = x∞ + (x0 - x∞) exp(-t/τ), worked by hand. */
class SettlingTest {
    private static final Instant FILLED = Instant.parse("2026-05-12T10:00:00Z");

    @ParameterizedTest
    @CsvSource({"60, 100", "160, 100", "-5, 420", "0.3, 0.1"})
    void findsWhereTheReadingsAreHeading(double first, double settled) {
        var found = Settling.of(exponential(first, settled, 15, 0, 8, 16, 24, 32));
        assertThat(found.method()).isEqualTo(Method.FIT);
        assertThat(settledValue(found).value()).isCloseTo(settled, within(1e-6 * Math.abs(settled)));
    }

    @Test
    void saysWhenToComeBack() {
        // 40 exp(-30/15) = 5.413 remain of 100; 5 remain after 15 min · ln(5.413/5) = 1.192 min more
        var found = Settling.of(exponential(60, 100, 15, 0, 10, 20, 30));
        assertThat(found.state()).isEqualTo(State.SETTLING);
        assertThat(found.remaining()).isCloseTo(0.05413, within(1e-5));
        assertThat(minutes(found)).isCloseTo(31.192, within(1e-3));
    }

    @Test
    void needsFortyMinutesOrMoreForAFreshCellWithAlcohol() {
        // common practice, no source: a fresh cell with alcoholic electrolyte settles in some 40 to 60 min; 20 % at
        // first, time
        // constant 18 min: 18 min · ln(0.8/0.05) = 49.9 min
        var found = Settling.of(exponential(20, 100, 18, 0, 5, 10, 15));
        assertThat(found.state()).isEqualTo(State.SETTLING);
        assertThat(minutes(found)).isCloseTo(49.9, within(0.05));
    }

    @Test
    void hasSettledWhenLittleRemains() {
        var found = Settling.of(exponential(60, 100, 15, 0, 10, 20, 30, 40));
        assertThat(found.state()).isEqualTo(State.SETTLED);
        assertThat(found.comeBackAt()).isNull();
    }

    @Test
    void hasSettledWhenTheMeterCannotTellTheRest() {
        // 5.413 remain, 2 u is 6
        var found = Settling.of(exponential(60, 100, 15, 0, 10, 20, 30).stream()
                .map(it -> new TimedValue(it.at(), new Estimate(it.value().value(), 3)))
                .toList());
        assertThat(found.state()).isEqualTo(State.SETTLED);
    }

    @Test
    void drawsTheCourseBeyondTheReadings() {
        // 100 - 40 exp(-45/15) = 98.00852 at 45 min
        var at = FILLED.plus(Duration.ofMinutes(45));
        assertThat(Settling.course(exponential(60, 100, 15, 0, 10, 20, 30), List.of(FILLED, at)))
                .satisfiesExactly(
                        first -> assertThat(first.value().value()).isCloseTo(60, within(1e-4)),
                        last -> assertThat(last.value().value()).isCloseTo(98.00852, within(1e-4)));
    }

    @Test
    void drawsNoCourseThroughThreeReadings() {
        assertThat(Settling.course(exponential(60, 100, 15, 0, 10, 20), List.of(FILLED)))
                .isEmpty();
    }

    @Test
    void doesNotCareAboutTheOrderOfReadings() {
        var shuffled = new ArrayList<>(exponential(60, 100, 15, 0, 10, 20, 30));
        Collections.reverse(shuffled);
        assertThat(Settling.of(shuffled)).isEqualTo(Settling.of(exponential(60, 100, 15, 0, 10, 20, 30)));
    }

    @Test
    void holdsThreeReadingsAgainstEachOther() {
        // spread 4 of 100 over 10 min is within 5 %; 12 is not
        assertThat(Settling.of(readings(98, 100, 102)).state()).isEqualTo(State.SETTLED);
        assertThat(settledValue(Settling.of(readings(98, 100, 102))).value()).isCloseTo(100, within(1e-9));
        var moving = Settling.of(readings(94, 100, 106));
        assertThat(moving.state()).isEqualTo(State.SETTLING);
        assertThat(moving.method()).isEqualTo(Method.LAST_THREE);
        assertThat(moving.remaining()).isCloseTo(0.12, within(1e-9));
        assertThat(minutes(moving)).isEqualTo(20);
    }

    @Test
    void fallsBackWhereAStraightClimbHasNoEnd() {
        var found = Settling.of(List.of(at(0, 50), at(5, 60), at(10, 70), at(15, 80), at(20, 90)));
        assertThat(found.method()).isEqualTo(Method.LAST_THREE);
        assertThat(found.state()).isEqualTo(State.SETTLING);
    }

    @Test
    void takesACellThatDoesNotMoveAsSettled() {
        assertThat(Settling.of(List.of(at(0, 70), at(5, 70), at(10, 70), at(15, 70)))
                        .state())
                .isEqualTo(State.SETTLED);
    }

    @Test
    void cannotTellFromOneOrTwoReadingsOrFromTenHastyOnes() {
        assertThat(Settling.of(List.of(at(0, 70))).state()).isEqualTo(State.UNKNOWN);
        assertThat(Settling.of(List.of(at(0, 70), at(60, 70))).state()).isEqualTo(State.UNKNOWN);
        assertThat(Settling.of(List.of(at(0, 70), at(1, 71), at(2, 70))).state())
                .isEqualTo(State.UNKNOWN);
        assertThat(minutes(Settling.of(List.of(at(0, 70))))).isEqualTo(10);
    }

    @Test
    void staysFiniteWithReadingsOfOneInstantAndOfNothing() {
        var found = Settling.of(List.of(at(0, 0), at(0, 0), at(0, 0), at(0, 0)));
        assertThat(found.state()).isEqualTo(State.UNKNOWN);
        assertThat(Settling.of(List.of(at(0, 0), at(10, 0), at(20, 0), at(30, 0)))
                        .remaining())
                .isFinite();
    }

    @Test
    void refusesAnEmptyHistory() {
        assertThatIllegalArgumentException().isThrownBy(() -> Settling.of(List.of()));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 1, 1e6})
    void doesNotDependOnTheUnit(double scale) {
        var scaled = exponential(60, 100, 15, 0, 10, 20, 30).stream()
                .map(it -> new TimedValue(it.at(), it.value().times(scale)))
                .toList();
        assertThat(minutes(Settling.of(scaled))).isCloseTo(31.192, within(1e-3));
    }

    private static List<TimedValue> exponential(double first, double settled, double tau, double... minutes) {
        return DoubleStream.of(minutes)
                .mapToObj(minute -> at(minute, settled + (first - settled) * Math.exp(-minute / tau)))
                .toList();
    }

    private static List<TimedValue> readings(double first, double second, double third) {
        return List.of(at(0, first), at(5, second), at(10, third));
    }

    private static TimedValue at(double minute, double value) {
        return new TimedValue(
                FILLED.plus(Duration.ofMillis(Math.round(minute * 60_000))),
                new Estimate(value, 1e-3 * Math.abs(value)));
    }

    private static double minutes(Settling found) {
        return Duration.between(FILLED, Objects.requireNonNull(found.comeBackAt()))
                        .toMillis()
                / 60_000.0;
    }

    private static Estimate settledValue(Settling found) {
        return Objects.requireNonNull(found.settledValue());
    }
}
