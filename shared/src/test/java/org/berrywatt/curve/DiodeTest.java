package org.berrywatt.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.berrywatt.curve.ReferenceCurves.Curve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class DiodeTest {
    /** 1e-12 relative; absolute against a hundredth of the photocurrent where a current is near 0. */
    private static final double ACCURACY = 1e-12;

    static Stream<Curve> allCurves() {
        return Stream.concat(ReferenceCurves.silicon(), ReferenceCurves.dyeCells());
    }

    @ParameterizedTest
    @MethodSource("allCurves")
    void reproducesExactCurrents(Curve curve) {
        for (var point : curve.points()) {
            assertThat(curve.diode().currentA(point[0])).isCloseTo(point[1], within(tolerance(curve, point[1])));
        }
    }

    @ParameterizedTest
    @MethodSource("allCurves")
    void reproducesExactVoltages(Curve curve) {
        var diode = curve.diode();
        for (var point : curve.points()) {
            // a current printed or stored with a rounding error moves the voltage by that error over the slope
            var rounding = Math.ulp(point[1]) / slope(diode, point);
            assertThat(diode.voltageV(point[1]))
                    .isCloseTo(point[0], within(ACCURACY * diode.openCircuitVoltageV() + 2 * rounding));
        }
    }

    @ParameterizedTest
    @MethodSource("org.berrywatt.curve.ReferenceCurves#silicon")
    void reproducesExactKeyValuesOfSiliconModules(Curve curve) {
        var diode = curve.diode();
        var voc = curve.value("v_oc");
        assertThat(diode.shortCircuitCurrentA()).isCloseTo(curve.value("i_sc"), relative(curve.value("i_sc")));
        assertThat(diode.openCircuitVoltageV()).isCloseTo(voc, relative(voc));
        assertPeak(diode, curve.value("v_mp"), curve.value("i_mp"), curve.value("p_mp"));
        assertThat(diode.currentA(voc / 2))
                .isCloseTo(curve.value("i_x_at_half_voc"), relative(curve.value("i_x_at_half_voc")));
    }

    @ParameterizedTest
    @MethodSource("org.berrywatt.curve.ReferenceCurves#dyeCells")
    void reproducesExactKeyValuesOfDyeCells(Curve curve) {
        var diode = curve.diode();
        assertThat(diode.shortCircuitCurrentA()).isCloseTo(curve.value("i_sc_A"), relative(curve.value("i_sc_A")));
        assertThat(diode.openCircuitVoltageV()).isCloseTo(curve.value("v_oc_V"), relative(curve.value("v_oc_V")));
        assertPeak(diode, curve.value("v_mp_V"), curve.value("i_mp_A"), curve.value("p_mp_W"));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void staysFiniteAndFallingAndItsOwnInverseOverTenDecades(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < 2_000; i++) {
            var diode = anyDiode(random);
            var low = anyVoltage(random);
            var high = low + Math.abs(low) * random.nextDouble(0.01, 1);
            var atLow = diode.currentA(low);
            assertThat(atLow).as("%s at %s V", diode, low).isFinite();
            assertThat(diode.currentA(high))
                    .as("%s at %s V", diode, high)
                    .isFinite()
                    .isLessThanOrEqualTo(atLow);
            assertInverse(diode, low, atLow);
            assertOrderly(diode);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void comesBackToTheCurrentByWayOfItsVoltageOverTenDecades(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < 2_000; i++) {
            var diode = anyDiode(random);
            var currentA = anyCurrent(diode, random);
            var voltageV = diode.voltageV(currentA);
            assertThat(voltageV).as("%s at %s A", diode, currentA).isFinite();
            assertThat(diode.currentA(voltageV))
                    .as("%s at %s A", diode, currentA)
                    .isCloseTo(currentA, within(roundedVoltage(diode, voltageV, currentA)));
        }
    }

    @Test
    void keepsToTheMostNegativeFiniteCurrentWhereTheExponentialLeavesADouble() {
        var diode = new Diode(1e-3, 1e-9, 1, 0, 1e3, 25);
        assertThat(diode.currentA(1_000)).isEqualTo(-Double.MAX_VALUE);
    }

    @Test
    void deliversNothingInTheDark() {
        var dark = new Diode(0, 1e-7, 2, 50, 5_000, 25);
        assertThat(dark.shortCircuitCurrentA()).isZero();
        assertThat(dark.openCircuitVoltageV()).isZero();
        assertThat(dark.maximumPower().powerW()).isZero();
    }

    @Test
    void doublingLightAndAreaOfAnUnloadedCellLeavesItsVoltage() {
        var diode = new Diode(1e-3, 1e-7, 2, 50, 5_000, 25);
        var twice = new Diode(2e-3, 2e-7, 2, 25, 2_500, 25);
        assertThat(twice.openCircuitVoltageV()).isCloseTo(diode.openCircuitVoltageV(), within(1e-14));
        assertThat(twice.currentA(0.1)).isCloseTo(2 * diode.currentA(0.1), within(1e-16));
    }

    @Test
    void followsTheLogLawUnderHalfTheLightWithoutAShunt() {
        // exact voltages of a cell with Iph 4 mA, I0 2 nA, n 1.6, no shunt at 25 °C: reference voc_log_law, mpmath, 40
        // digits
        var full = new Diode(4e-3, 2e-9, 1.6, 25, Double.POSITIVE_INFINITY, 25);
        assertThat(full.openCircuitVoltageV()).isCloseTo(0.596423759574519, within(1e-14));
        assertThat(full.underLight(0.5).openCircuitVoltageV()).isCloseTo(0.567929798082016, within(1e-14));
        assertThat(full.underLight(0.05).openCircuitVoltageV()).isCloseTo(0.473275208557469, within(1e-14));
    }

    private static void assertPeak(Diode diode, double voltageV, double currentA, double powerW) {
        var peak = diode.maximumPower();
        assertThat(peak.powerW()).isCloseTo(powerW, relative(powerW));
        assertThat(peak.voltageV()).isCloseTo(voltageV, relative(voltageV));
        assertThat(peak.currentA()).isCloseTo(currentA, relative(currentA));
    }

    private static void assertInverse(Diode diode, double voltageV, double currentA) {
        if (currentA <= -Double.MAX_VALUE) {
            return;
        }
        var slope = slope(diode, new double[] {voltageV, currentA});
        var rounding = Math.ulp(Math.max(Math.abs(currentA), diode.photocurrentA())) / slope;
        var reach = Math.abs(voltageV) + Math.abs(currentA) * diode.seriesResistanceOhm();
        assertThat(diode.voltageV(currentA))
                .as("%s at %s V", diode, voltageV)
                .isCloseTo(voltageV, within(1e-12 * reach + 8 * rounding));
    }

    private static void assertOrderly(Diode diode) {
        var peak = diode.maximumPower();
        var product = diode.shortCircuitCurrentA() * diode.openCircuitVoltageV();
        assertThat(diode.shortCircuitCurrentA()).isBetween(0.0, diode.photocurrentA());
        assertThat(peak.powerW() / product).as("fill factor of %s", diode).isBetween(0.25 - 1e-9, 1.0);
    }

    private static double slope(Diode diode, double[] point) {
        var conductance = diode.conductanceS(diode.junctionAtVoltage(point[0]));
        return conductance / (1 + diode.seriesResistanceOhm() * conductance);
    }

    private static Diode anyDiode(SplittableRandom random) {
        return new Diode(
                logUniform(random, 1e-8, 1e2),
                logUniform(random, 1e-15, 1e-5),
                random.nextDouble(1, 5),
                logUniform(random, 1e-5, 1e5),
                logUniform(random, 1e-2, 1e8),
                random.nextDouble(-40, 100));
    }

    private static double anyVoltage(SplittableRandom random) {
        return (random.nextBoolean() ? 1 : -1) * logUniform(random, 1e-7, 1e3);
    }

    /** Delivered up to the photocurrent, taken up to a thousand times it. */
    private static double anyCurrent(Diode diode, SplittableRandom random) {
        var size = diode.photocurrentA() * logUniform(random, 1e-7, 1);
        return random.nextBoolean() ? size : -1e3 * size;
    }

    /** A voltage is rounded by its unit in the last place, or by those of what it is the difference of. */
    private static double roundedVoltage(Diode diode, double voltageV, double currentA) {
        var reachV = Math.abs(voltageV) + 2 * Math.abs(currentA) * diode.seriesResistanceOhm();
        return 1e-12 * Math.max(Math.abs(currentA), diode.photocurrentA())
                + 8 * Math.ulp(reachV) * slope(diode, new double[] {voltageV, currentA});
    }

    private static double logUniform(SplittableRandom random, double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    private static double tolerance(Curve curve, double currentA) {
        return ACCURACY * Math.max(Math.abs(currentA), 1e-2 * curve.diode().photocurrentA());
    }

    private static Offset<Double> relative(double value) {
        return within(ACCURACY * Math.abs(value));
    }
}
