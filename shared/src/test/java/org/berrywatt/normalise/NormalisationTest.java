package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.berrywatt.uncertainty.Contribution;
import org.berrywatt.uncertainty.Estimate;
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
    void namesWhatOtherCellsShare() {
        var result = Normalisation.of(Measured.cell(), Measured.REFERENCE);
        assertThat(result.shared())
                .extracting(SharedUncertainty::source)
                .containsExactly(
                        "station.window bench", "instrument.solarMeter", "mismatch.solarMeter.sun.anthocyanin");
        assertThat(result.shared()).allMatch(part -> part.powerDensityWm2() < 0);
    }

    private static double share(Result result, String input) {
        return result.powerDensityWm2().contributions().stream()
                .filter(contribution -> contribution.input().name().equals(input))
                .mapToDouble(Contribution::share)
                .sum();
    }
}
