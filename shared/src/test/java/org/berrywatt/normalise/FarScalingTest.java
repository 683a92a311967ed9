package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.berrywatt.curve.Diode;
import org.berrywatt.curve.Sweep;
import org.berrywatt.curve.SweepPoint;
import org.berrywatt.uncertainty.Deviates;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A swept cell read far from the reference light: a diode carries it by a factor of two, bounds the rest of the way. */
class FarScalingTest {
    private static final Diode CELL = new Diode(200e-6, 1e-7, 2, 300, 10_000, 25);

    @Test
    void saysHowFarTheDiodeCarriesIt() {
        assertThat(at(0.1).steps())
                .extracting(Step::key)
                .contains("step.voltageFittedPart", "step.voltage", "step.fillFactorFittedPart");
        assertThat(at(0.1).steps())
                .extracting(Step::formula)
                .contains("Vfit = Voc · Vdiode(Gfit) / Vdiode(Geff), Gfit = Geff / 2");
        assertThat(at(10).steps())
                .extracting(Step::formula)
                .contains("FFfit = FF · FFdiode(Gfit) / FFdiode(Geff), Gfit = 2 · Geff");
    }

    @Test
    void hasOneDiodeAllTheWayWithinTwo() {
        assertThat(at(1.9).steps())
                .extracting(Step::key)
                .contains("step.voltageFitted")
                .doesNotContain("step.voltage", "step.voltageFittedPart");
    }

    @ParameterizedTest
    @ValueSource(doubles = {2, 0.5})
    void changesLittleWhereTheBoundsBegin(double edge) {
        assertThat(power(edge * 1.001)).isCloseTo(power(edge / 1.001), within(0.01 * power(edge)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {4, 10, 0.2, 0.1})
    void isLessSureThanNearTheReference(double ratio) {
        assertThat(at(ratio).powerDensityWm2().estimate().relativeUncertainty())
                .isGreaterThan(at(1).powerDensityWm2().estimate().relativeUncertainty());
    }

    /** A fill factor is the area of a rectangle within another. */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.3, 0.6, 1, 1.9, 20})
    void neverHasAFillFactorAboveOne(double ratio) {
        var trials = at(ratio).trials(Measurand.FILL_FACTOR, new Deviates(7, 2_000), "cell");
        assertThat(DoubleStream.of(trials).max().orElseThrow()).isBetween(0.0, 1.0);
    }

    private static double power(double ratio) {
        return at(ratio).powerDensityWm2().value();
    }

    private static Result at(double ratio) {
        var points = IntStream.rangeClosed(1, 11)
                .mapToDouble(i -> CELL.openCircuitVoltageV() * i / 12)
                .mapToObj(voltageV -> new SweepPoint(
                        voltageV, CELL.currentA(voltageV), 0.003 * voltageV, 0.006 * CELL.currentA(voltageV)))
                .toList();
        return Normalisation.of(
                Measured.cell(LoadSweep.of(Sweep.of(points)), null, Measured.AREA, Measured.sunlight(100 / ratio)),
                Measured.REFERENCE);
    }
}
