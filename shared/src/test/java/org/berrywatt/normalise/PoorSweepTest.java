package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.berrywatt.curve.SweepFigures;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Sweeps that leave a figure open by half: a normal distribution does not end at 0. */
class PoorSweepTest {
    /** The first point is 5 mV over 10 ohm on a display of whole millivolts: the current is hardly known. */
    private static final LoadSweep POOR = new LoadSweep(
            new SweepFigures(
                    new Estimate(500e-6, 250e-6),
                    new Estimate(0.34, 0.01),
                    new Estimate(83e-6, 3e-6),
                    new Estimate(0.49, 0.25),
                    4.5e-4,
                    true,
                    null),
            List.of());

    @ParameterizedTest
    @EnumSource(Measurand.class)
    void hasNoTrialBelowZero(Measurand measurand) {
        var result = Normalisation.of(
                Measured.cell(POOR, Measured.shown(2e-6), Measured.AREA, Measured.sunlight(100)), Measured.REFERENCE);
        assertThat(DoubleStream.of(result.trials(measurand, new Deviates(3, 10_000), "cell"))
                        .min()
                        .orElseThrow())
                .isGreaterThanOrEqualTo(0);
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
        var result = Normalisation.of(
                Measured.cell(new LoadSweep(figures, List.of()), null, Measured.AREA, Measured.sunlight(100)),
                Measured.REFERENCE);

        assertThat(Arrays.stream(result.trials(Measurand.POWER_DENSITY, new Deviates(1, 10_000), "cell")))
                .allMatch(power -> power >= 0);
    }
}
