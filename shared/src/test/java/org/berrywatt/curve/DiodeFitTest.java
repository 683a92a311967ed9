package org.berrywatt.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.curve.ReferenceCurves.Curve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DiodeFitTest {
    /** k/q of the published fits, k = 1.3806503e-23 J/K, q = 1.60217646e-19 C, over that of today's SI. */
    private static final double OLD_CONSTANTS = 1.3806503e-23 / 1.60217646e-19 / (1.380649e-23 / 1.602176634e-19);

    static Stream<Curve> allCurves() {
        return Stream.concat(ReferenceCurves.silicon(), ReferenceCurves.dyeCells());
    }

    @Test
    void reachesThePublishedErrorAndParametersOfTheFrenchCellByThePublishedCriterion() {
        // rtc_france_parameters.csv: RMSE 9.8602e-4 A and these parameters, common to many papers (Easwarakhanthan's
        // points)
        var fit = DiodeFit.of(MeasuredCurves.rtcFrance(), 33, FitCriterion.INSERTED);
        assertThat(fit.rmseA()).isCloseTo(9.8602e-4, within(0.5e-8));
        assertParameters(fit.diode(), 0.76077553, 3.23020e-7, 1.48118359, 0.03637709, 53.71852514, 1e-6);
    }

    @Test
    void reachesTheLeastErrorOfTheFrenchCellByTheSolvedCurrent() {
        // rtc_france_parameters.csv, row "exact": refitted there with scipy least_squares; published RMSE 7.7301e-4
        var fit = DiodeFit.of(MeasuredCurves.rtcFrance(), 33);
        assertThat(fit.rmseA()).isCloseTo(7.7301e-4, within(0.5e-8));
        assertParameters(fit.diode(), 0.7607879666, 3.106845868e-07, 1.477267783, 0.03654694546, 52.88978903, 1e-6);
        assertThat(fit.identifiable()).isTrue();
    }

    @ParameterizedTest
    @MethodSource("allCurves")
    void recoversTheParametersOfExactCurves(Curve curve) {
        var diode = curve.diode();
        var points = curve.points().stream()
                .map(point -> SweepPoint.exact(point[0], point[1]))
                .toList();
        var fit = DiodeFit.of(points, diode.temperatureC());
        for (var parameter : fit.parameters()) {
            var truth = parameter.parameter().of(diode);
            assertThat(parameter.value()).as("%s", parameter).isCloseTo(truth, within(1e-9 * truth));
        }
        assertThat(fit.identifiable()).isTrue();
    }

    @Test
    void saysThatAStraightLineDoesNotTellTheParameters() {
        // common practice, no source: a straight line is a resistor in series or one across, and nobody can tell which
        var line = Stream.of(50.0, 200.0, 500.0, 1000.0, 5000.0)
                .map(load -> SweepPoint.exact(0.5 * load / (load + 500), 0.5 / (load + 500)))
                .toList();
        var fit = DiodeFit.of(line, 25);
        assertThat(fit.identifiable()).isFalse();
        assertThat(fit.parameters())
                .filteredOn(parameter -> !parameter.identifiable())
                .extracting(FittedParameter::parameter)
                .contains(DiodeParameter.SATURATION_CURRENT, DiodeParameter.IDEALITY, DiodeParameter.SHUNT_RESISTANCE);
    }

    @Test
    void refusesTemperaturesThatNoCellHas() {
        for (var bad : List.of(Double.NaN, -101.0, 201.0, Double.POSITIVE_INFINITY)) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> DiodeFit.of(MeasuredCurves.rtcFrance(), bad))
                    .withMessageContaining("[-100, 200] °C, not " + bad);
        }
    }

    private static void assertParameters(
            Diode diode, double iph, double i0, double n, double rs, double rsh, double accuracy) {
        assertThat(diode.photocurrentA()).isCloseTo(iph, within(accuracy * iph));
        assertThat(diode.saturationCurrentA()).isCloseTo(i0, within(10 * accuracy * i0));
        assertThat(diode.idealityFactor()).isCloseTo(n * OLD_CONSTANTS, within(accuracy * n));
        assertThat(diode.seriesResistanceOhm()).isCloseTo(rs, within(accuracy * rs));
        assertThat(diode.shuntResistanceOhm()).isCloseTo(rsh, within(accuracy * rsh));
    }
}
