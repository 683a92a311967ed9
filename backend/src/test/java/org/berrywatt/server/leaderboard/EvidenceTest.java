package org.berrywatt.server.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.berrywatt.server.reading.ReadingKind;
import org.berrywatt.server.reading.RecordedReading;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class EvidenceTest {

    private static final Instant NOON = Instant.parse("2026-05-05T12:00:00Z");
    private static final UUID CELL = UUID.randomUUID();
    private static final UUID YARD = UUID.randomUUID();
    private static final UUID DESK = UUID.randomUUID();

    @Test
    void takesTheLatestLightReading() {
        var first = light(0, YARD);
        var second = light(5, DESK);

        assertThat(Evidence.among(List.of(first, second)).underLight()).contains(second);
    }

    @Test
    void takesTheDarkCheckNearestInTime() {
        var early = dark(0);
        var near = dark(28);
        var light = light(30, YARD);
        var late = dark(40);

        assertThat(Evidence.among(List.of(early, near, light, late)).dark()).contains(near);
    }

    @Test
    void takesTheLaterOfTwoEquallyNearDarkChecks() {
        var before = dark(20);
        var light = light(30, YARD);
        var after = dark(40);

        assertThat(Evidence.among(List.of(before, light, after)).dark()).contains(after);
    }

    @Test
    void letsAFreshSweepOfTheSameStationStandInForALightReading() {
        var sweep = sweep(0, YARD);
        var light = light(15, YARD);

        var evidence = Evidence.among(List.of(sweep, light));

        assertThat(evidence.underLight()).contains(sweep);
        assertThat(evidence.passedOver()).contains(light);
    }

    @Test
    void passesAnOldSweepOver() {
        var sweep = sweep(0, YARD);
        var light = light(16, YARD);

        var evidence = Evidence.among(List.of(sweep, light));

        assertThat(evidence.underLight()).contains(light);
        assertThat(evidence.passedOver()).isEmpty();
    }

    @Test
    void passesASweepOfAnotherStationOver() {
        var light = light(5, DESK);

        assertThat(Evidence.among(List.of(sweep(0, YARD), light)).underLight()).contains(light);
    }

    @Test
    void takesALaterSweepForItself() {
        var sweep = sweep(20, DESK);

        assertThat(Evidence.among(List.of(light(0, YARD), sweep)).underLight()).contains(sweep);
    }

    @Test
    void knowsADarkCheckWithoutLight() {
        var later = dark(10);

        var evidence = Evidence.among(List.of(dark(0), later));

        assertThat(evidence.dark()).contains(later);
        assertThat(evidence.underLight()).isEmpty();
    }

    @Test
    void takesLightTogglesForNoReadingUnderLight() {
        var light = light(0, YARD);
        var toggles = reading(ReadingKind.TOGGLES, YARD, 5);

        var evidence = Evidence.among(List.of(light, toggles));

        assertThat(evidence.underLight()).contains(light);
        assertThat(evidence.toggles()).contains(toggles);
    }

    private static RecordedReading dark(int minute) {
        return reading(ReadingKind.DARK, null, minute);
    }

    private static RecordedReading light(int minute, UUID station) {
        return reading(ReadingKind.LIGHT, station, minute);
    }

    private static RecordedReading sweep(int minute, UUID station) {
        return reading(ReadingKind.SWEEP, station, minute);
    }

    private static RecordedReading reading(ReadingKind kind, @Nullable UUID station, int minute) {
        Instant at = NOON.plus(minute, ChronoUnit.MINUTES);
        return new RecordedReading(
                UUID.randomUUID(), CELL, kind, station, null, null, null, null, List.of(), "team", at);
    }
}
