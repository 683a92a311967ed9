package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.SplittableRandom;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.berrywatt.light.Lamp;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DoorsTest {
    @Test
    void refusesWhatHasNoResultNamingValueAndLimit() {
        assertRefused("area", "(0, ∞), not 0.0", () -> result(Measured.spot(1e-4, 0.4), null, Estimate.exact(0), 100));
        assertRefused(
                "area",
                "(0, ∞), not -1.0E-4",
                () -> result(Measured.spot(1e-4, 0.4), null, Estimate.exact(-1e-4), 100));
        assertRefused("voltage", "(0, ∞), not 0.0", () -> result(Measured.spot(1e-4, 0), null, Measured.AREA, 100));
        assertRefused("voltage", "(0, ∞), not -0.1", () -> result(Measured.spot(1e-4, -0.1), null, Measured.AREA, 100));
        assertRefused("current", "(0, ∞), not 0.0", () -> result(Measured.spot(0, 0.4), null, Measured.AREA, 100));
        assertRefused(
                "photocurrent",
                "(0, ∞)",
                () -> result(Measured.spot(1e-4, 0.4), Measured.shown(2e-4), Measured.AREA, 100));
        assertRefused(
                "effectiveIrradiance",
                "[0.01, 5000]",
                () -> result(Measured.spot(1e-4, 0.4), null, Measured.AREA, 0.001));
        assertRefused(
                "effectiveIrradiance",
                "[0.01, 5000]",
                () -> result(Measured.spot(1e-4, 0.4), null, Measured.AREA, 5_001));
        assertRefused("reading", "(-∞, ∞), not NaN", () -> new Shown(Double.NaN, 0, 0));
        assertRefused("accuracy", "[0, ∞), not NaN", () -> new Shown(1, Double.NaN, 0));
        assertRefused("resolution", "[0, ∞), not -1.0", () -> new Shown(1, 0, -1));
        assertRefused(
                "burden",
                "[0, ∞), not -1.0",
                () -> new SpotReading(Measured.shown(1), Measured.shown(1), -1, Double.POSITIVE_INFINITY));
        assertRefused("referenceIrradiance", "(0, ∞), not 0.0", () -> new Reference(0, 1));
        assertRefused("referenceArea", "(0, ∞), not NaN", () -> new Reference(1, Double.NaN));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void answersWithFiniteNumbersOrRefuses(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < 300; i++) {
            var cell = anyCell(random);
            try {
                var result = Normalisation.of(cell, Measured.REFERENCE);
                assertFinite(result);
            } catch (NormalisationRefused refused) {
                assertThat(refused.limit()).isNotBlank();
            }
        }
    }

    private static CellMeasurement anyCell(SplittableRandom random) {
        var lamp = List.of(Lamp.values()).get(random.nextInt(Lamp.values().length));
        var light = Measured.light(lamp, Math.pow(10, random.nextDouble(-2, 3.5)), random.nextBoolean());
        var area = Math.pow(10, random.nextDouble(-6, -1));
        var current = Math.pow(10, random.nextDouble(-9, 0));
        var voltage = Math.pow(10, random.nextDouble(-4, 0));
        var spot = new SpotReading(
                new Shown(current, current * random.nextDouble(3), current * random.nextDouble()),
                new Shown(voltage, voltage * random.nextDouble(3), voltage * random.nextDouble()),
                Math.pow(10, random.nextDouble(0, 4)),
                Double.POSITIVE_INFINITY);
        return Measured.cell(
                random.nextBoolean() ? spot : Measured.sweep(current, voltage, random.nextDouble(0.2, 0.9)),
                random.nextBoolean() ? null : Measured.shown(current * random.nextDouble(-1, 1)),
                new Estimate(area, area * random.nextDouble(0.5)),
                light);
    }

    private static void assertFinite(Result result) {
        assertThat(List.of(
                        result.currentDensityAm2(),
                        result.openCircuitVoltageV(),
                        result.fillFactor(),
                        result.powerDensityWm2().estimate(),
                        result.powerAtReferenceAreaW()))
                .allMatch(estimate -> estimate.value() > 0 && Double.isFinite(estimate.standardUncertainty()));
        assertThat(result.fillFactor().value()).isBetween(0.0, 1.0);
        assertThat(result.steps()).allMatch(step -> !step.result().contains("NaN"));
    }

    private static Result result(UnderLight underLight, @Nullable Shown dark, Estimate area, double irradianceWm2) {
        return Normalisation.of(
                Measured.cell(underLight, dark, area, Measured.sunlight(irradianceWm2)), Measured.REFERENCE);
    }

    private static void assertRefused(String quantity, String part, ThrowingCallable call) {
        assertThatExceptionOfType(NormalisationRefused.class)
                .isThrownBy(call)
                .withMessageContaining(part)
                .satisfies(refused -> assertThat(refused.quantity()).isEqualTo(quantity));
    }
}
