package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.DoubleStream;
import org.berrywatt.curve.SweepFigures;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A sweep whose first point is 5 mV over 10 ohm on a display of whole millivolts: its current is hardly known. */
class PoorSweepTest {
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
}
