package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.berrywatt.curve.SweepFigures;
import org.berrywatt.light.Lamp;
import org.berrywatt.uncertainty.Contribution;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NormalisationTest {

    @Test
    void multipliesFillFactorVoltageAndCurrentDensityWhenTheLightIsTheReference() {
        // common practice, no source: 0.40 V, 1.0 mA/cm², FF 0.50 at 1000 W/m² are 0.20 %
        var cell = Measured.cell(Measured.sweep(1e-3, 0.4, 0.5), null, Estimate.exact(1e-4), Measured.sunlight(1_000));
        var result = Normalisation.of(cell, new Reference(1_000, 4e-4));
        assertThat(result.currentDensityAm2().value()).isCloseTo(10, within(1e-12));
        assertThat(result.openCircuitVoltageV().value()).isCloseTo(0.4, within(1e-12));
        assertThat(result.fillFactor().value()).isCloseTo(0.5, within(1e-12));
        assertThat(result.powerDensityWm2().value() / 1_000).isCloseTo(0.0020, within(1e-12));
        assertThat(result.powerAtReferenceAreaW().value()).isCloseTo(2.0 * 4e-4, within(1e-12));
        assertThat(result.notes()).extracting(Note::key).containsExactly("note.darkNotRead");
    }

    @Test
    void leavesTheFillFactorOpenWithoutASweepAndSaysSo() {
        var result = Normalisation.of(Measured.cell(), Measured.REFERENCE);
        // middle of a straight line's 1/4 and an ideal diode's at 0.4 V (v = 15.57: 0.7712 by Green's formula)
        assertThat(result.fillFactor().value()).isCloseTo((0.25 + 0.7712) / 2, within(2e-4));
        assertThat(result.fillFactor().standardUncertainty())
                .isCloseTo((0.7712 - 0.25) / 2 / Math.sqrt(3), within(2e-4));
        assertThat(result.notes()).extracting(Note::key).contains("note.noSweep");
        assertThat(share(result, "input.fillFactor")).isGreaterThan(0.5);
    }

    @Test
    void scalesTheCurrentWithTheLight() {
        // IEC 60904-10: current proportional to irradiance
        var half = Normalisation.of(Measured.in(Measured.sunlight(200)), Measured.REFERENCE);
        var full = Normalisation.of(Measured.cell(), Measured.REFERENCE);
        assertThat(half.currentDensityAm2().value())
                .isCloseTo(full.currentDensityAm2().value() / 2, within(1e-12));
    }

    @Test
    void spansLogLawAndLinearLawWithTheVoltage() {
        // Voc 0.3 V from 50 to 100 W/m²: log law + kT/q ln 2 = 17.8 mV, linear law 0.6 V; middle and half-width by hand
        var cell = Measured.cell(Measured.spot(1e-4, 0.3), null, Measured.AREA, Measured.sunlight(50));
        var voltage = Normalisation.of(cell, Measured.REFERENCE).openCircuitVoltageV();
        assertThat(voltage.value()).isCloseTo((0.3178 + 0.6) / 2, within(1e-4));
        assertThat(voltage.standardUncertainty()).isGreaterThan((0.6 - 0.3178) / 2 / Math.sqrt(3));
    }

    @Test
    void knowsTheVoltageBetterWithASweepThatShowsLittleShunt() {
        var spot = Measured.cell(Measured.spot(1e-4, 0.3), null, Measured.AREA, Measured.sunlight(50));
        var sweep = Measured.cell(Measured.sweep(1e-4, 0.3, 0.5), null, Measured.AREA, Measured.sunlight(50));
        assertThat(Normalisation.of(sweep, Measured.REFERENCE)
                        .openCircuitVoltageV()
                        .standardUncertainty())
                .isLessThan(Normalisation.of(spot, Measured.REFERENCE)
                                .openCircuitVoltageV()
                                .standardUncertainty()
                        / 2);
    }

    @Test
    void subtractsTheDarkCurrentAndSaysSo() {
        var cell =
                Measured.cell(Measured.spot(100e-6, 0.4), Measured.shown(20e-6), Measured.AREA, Measured.sunlight(100));
        var result = Normalisation.of(cell, Measured.REFERENCE);
        // (100 - 20) µA / 2 cm² = 40 µA/cm² = 0.4 A/m²
        assertThat(result.currentDensityAm2().value()).isCloseTo(0.4, within(1e-12));
        assertThat(result.notes())
                .filteredOn(note -> note.key().equals("note.darkSubtracted"))
                .hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 3, 10})
    void leavesDensitiesWhenAreaAndCurrentGrowAlike(double factor) {
        var cell = Measured.cell(
                Measured.spot(factor * 100e-6, 0.4), null, Measured.AREA.times(factor), Measured.sunlight(100));
        var result = Normalisation.of(cell, Measured.REFERENCE);
        var plain = Normalisation.of(Measured.cell(), Measured.REFERENCE);
        assertThat(result.powerDensityWm2().value())
                .isCloseTo(plain.powerDensityWm2().value(), within(1e-12));
        assertThat(result.powerDensityWm2().standardUncertainty())
                .isCloseTo(plain.powerDensityWm2().standardUncertainty(), within(1e-9));
    }

    @Test
    void leavesTheCurrentDensityWhenLightAndCurrentGrowAlike() {
        var cell = Measured.cell(Measured.spot(250e-6, 0.4), null, Measured.AREA, Measured.sunlight(250));
        assertThat(Normalisation.of(cell, Measured.REFERENCE)
                        .currentDensityAm2()
                        .value())
                .isCloseTo(
                        Normalisation.of(Measured.cell(), Measured.REFERENCE)
                                .currentDensityAm2()
                                .value(),
                        within(1e-12));
    }

    @Test
    void combinesTheRelativeUncertaintiesOfACurrentDensity() {
        // JCGM 100, 5.1.6: accuracy 1 %/√3, digit 0.05 %/√3, area 5 %, contact 6 %, light 1 %, calibration 5 %, place 5
        // % and
        // the mismatch of sunlight in squares
        var cell = Measured.cell();
        var mismatch = cell.light().irradiance().mismatch().relativeUncertainty();
        var squares = 0.01 * 0.01 / 3
                + 0.0005 * 0.0005 / 3
                + 0.05 * 0.05
                + 0.06 * 0.06
                + 0.01 * 0.01
                + 0.05 * 0.05
                + 0.05 * 0.05
                + mismatch * mismatch;
        assertThat(Normalisation.of(cell, Measured.REFERENCE)
                        .currentDensityAm2()
                        .relativeUncertainty())
                .isCloseTo(Math.sqrt(squares), within(1e-4));
    }

    @Test
    void sharesTheVarianceOutCompletely() {
        var result = Normalisation.of(Measured.cell(), Measured.REFERENCE);
        assertThat(result.powerDensityWm2().contributions().stream()
                        .mapToDouble(Contribution::share)
                        .sum())
                .isCloseTo(1, within(1e-9));
    }

    @Test
    void notesScalingByMoreThanThirtyPercentAndFlagsMoreThanThreefold() {
        assertThat(noteKeys(Measured.sunlight(100 / 1.29))).doesNotContain("note.scaled", "note.scaledFar");
        assertThat(noteKeys(Measured.sunlight(100 / 1.31))).contains("note.scaled");
        assertThat(noteKeys(Measured.sunlight(131))).contains("note.scaled");
        assertThat(noteKeys(Measured.sunlight(100 / 2.9))).contains("note.scaled");
        assertThat(noteKeys(Measured.sunlight(100 / 3.1)))
                .contains("note.scaledFar")
                .doesNotContain("note.scaled");
    }

    @Test
    void notesAStationWhoseReadingIsOld() {
        assertThat(noteKeys(Measured.light(Lamp.SUN, 100, true))).contains("note.stationStale");
        assertThat(noteKeys(Measured.light(Lamp.SUN, 100, false))).doesNotContain("note.stationStale");
    }

    @Test
    void namesWhatOtherCellsShare() {
        var result = Normalisation.of(Measured.cell(), Measured.REFERENCE);
        assertThat(result.shared())
                .extracting(SharedUncertainty::source)
                .containsExactly(
                        "station.window bench", "instrument.solarMeter", "mismatch.solarMeter.sun.anthocyanin");
        assertThat(result.shared()).allMatch(part -> part.powerDensityWm2() < 0);
    }

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

    /** Two points beside the peak leave its power open by half or more, and a normal distribution does not end at 0. */
    @Test
    void drawsNoPowerBelowZeroHoweverPoorTheSweep() {
        var known = Measured.sweep(100e-6, 0.4, 0.4).figures();
        var figures = new SweepFigures(
                known.shortCircuitCurrentA(),
                known.openCircuitVoltageV(),
                new Estimate(16e-6, 8e-6),
                known.fillFactor(),
                known.shuntConductanceS(),
                known.peakBracketed(),
                known.hysteresis());
        var result = result(new LoadSweep(figures, List.of()), null, Measured.AREA, 100);

        assertThat(Arrays.stream(result.trials(Measurand.POWER_DENSITY, new Deviates(1, 10_000), "cell")))
                .allMatch(power -> power >= 0);
    }

    private static Result result(UnderLight underLight, @Nullable Shown dark, Estimate area, double irradianceWm2) {
        return Normalisation.of(
                Measured.cell(underLight, dark, area, Measured.sunlight(irradianceWm2)), Measured.REFERENCE);
    }

    private static List<String> noteKeys(LightAtCell light) {
        return Normalisation.of(Measured.in(light), Measured.REFERENCE).notes().stream()
                .map(Note::key)
                .toList();
    }

    private static double share(Result result, String input) {
        return result.powerDensityWm2().contributions().stream()
                .filter(contribution -> contribution.input().name().equals(input))
                .mapToDouble(Contribution::share)
                .sum();
    }

    private static void assertRefused(String quantity, String part, ThrowingCallable call) {
        assertThatExceptionOfType(NormalisationRefused.class)
                .isThrownBy(call)
                .withMessageContaining(part)
                .satisfies(refused -> assertThat(refused.quantity()).isEqualTo(quantity));
    }
}
