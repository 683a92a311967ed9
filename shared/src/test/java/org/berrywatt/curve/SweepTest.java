package org.berrywatt.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.assertj.core.data.Offset;
import org.berrywatt.curve.ReferenceCurves.Curve;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SweepTest {
    /** Loads of a school's resistor box, two per decade (common practice, no source). */
    private static final List<Double> HALF_DECADES =
            List.of(10.0, 33.0, 100.0, 330.0, 1e3, 3.3e3, 1e4, 3.3e4, 1e5, 3.3e5, 1e6);

    @ParameterizedTest
    @MethodSource("org.berrywatt.curve.ReferenceCurves#dyeCells")
    void findsTheFiguresOfExactLoadSweepsWithinTheirIntervals(Curve curve) {
        var figures = Sweep.of(resistiveLoads(curve)).figures();
        assertHolds(figures.shortCircuitCurrentA(), curve.value("i_sc_A"));
        assertHolds(figures.openCircuitVoltageV(), curve.value("v_oc_V"));
        assertHolds(figures.maximumPowerW(), curve.value("p_mp_W"));
        assertHolds(figures.fillFactor(), curve.value("fill_factor"));
        assertThat(figures.shortCircuitCurrentA().value())
                .isCloseTo(curve.value("i_sc_A"), percent(curve, "i_sc_A", 1));
        assertThat(figures.openCircuitVoltageV().value()).isCloseTo(curve.value("v_oc_V"), percent(curve, "v_oc_V", 1));
        assertThat(figures.maximumPowerW().value()).isCloseTo(curve.value("p_mp_W"), percent(curve, "p_mp_W", 5));
    }

    @ParameterizedTest
    @MethodSource("org.berrywatt.curve.ReferenceCurves#dyeCells")
    void findsThePowerOfACloselySweptCurveToAFewTenthsOfAPercent(Curve curve) {
        var figures = Sweep.of(curve.points().stream()
                        .map(point -> SweepPoint.exact(point[0], point[1]))
                        .toList())
                .figures();
        assertThat(figures.maximumPowerW().value()).isCloseTo(curve.value("p_mp_W"), percent(curve, "p_mp_W", 0.5));
        assertThat(figures.shortCircuitCurrentA().value())
                .isCloseTo(curve.value("i_sc_A"), percent(curve, "i_sc_A", 0.3));
        assertThat(figures.openCircuitVoltageV().value())
                .isCloseTo(curve.value("v_oc_V"), percent(curve, "v_oc_V", 0.5));
        assertHolds(figures.maximumPowerW(), curve.value("p_mp_W"));
    }

    @ParameterizedTest
    @MethodSource("org.berrywatt.curve.ReferenceCurves#dyeCells")
    void findsVoltageAndCurrentAtThePeakWithinTheirIntervals(Curve curve) {
        var peak = Sweep.of(resistiveLoads(curve)).peak();
        assertHolds(peak.voltageV(), curve.value("v_mp_V"));
        assertHolds(peak.currentA(), curve.value("i_mp_A"));
    }

    @ParameterizedTest
    @MethodSource("org.berrywatt.curve.ReferenceCurves#dyeCells")
    void doesNotUnderstateTheShunt(Curve curve) {
        var figures = Sweep.of(resistiveLoads(curve)).figures();
        // the shunt's part of the photocurrent at open circuit follows from the curve's own parameters
        var share = curve.value("v_oc_V")
                / (curve.diode().shuntResistanceOhm() * curve.diode().photocurrentA());
        assertThat(figures.shuntConductanceS() * curve.value("v_oc_V") / curve.value("i_sc_A"))
                .isGreaterThanOrEqualTo(share);
    }

    @Test
    void givesAStraightLineAFillFactorOfAQuarter() {
        // common practice, no source: a straight line has FF 0.25
        var figures = Sweep.of(straight(HALF_DECADES)).figures();
        assertThat(figures.fillFactor().value()).isCloseTo(0.25, within(0.002));
        assertHolds(figures.fillFactor(), 0.25);
        assertThat(figures.peakBracketed()).isTrue();
    }

    @Test
    void doesNotCareAboutTheOrderOfPointsOrAboutRepeats() {
        var points = straight(HALF_DECADES);
        var shuffled = Stream.concat(points.stream(), points.stream().limit(4)).collect(Collectors.toList());
        Collections.shuffle(shuffled, new Random(7));
        var repeated = Sweep.of(shuffled).figures();
        var plain = Sweep.of(points).figures();
        assertThat(repeated.maximumPowerW().value())
                .isCloseTo(plain.maximumPowerW().value(), within(1e-15));
        assertThat(Sweep.of(reversed(points))).isEqualTo(Sweep.of(points));
    }

    @Test
    void saysWhenThePeakIsNotBetweenThePoints() {
        var figures = Sweep.of(straight(List.of(10.0, 20.0, 50.0, 100.0, 200.0, 300.0)))
                .figures();
        assertThat(figures.peakBracketed()).isFalse();
        // Pmax of a line from 1 mA to 0.5 V is 0.5 V · 1 mA / 4
        assertHolds(figures.maximumPowerW(), 0.125e-3);
    }

    @Test
    void holdsTheTruthInNineteenOfTwentyNoisySweeps() {
        var random = new SplittableRandom(2026);
        var truth = new Diode(1e-3, 1e-7, 2, 80, 3_000, 25);
        var inside = IntStream.range(0, 1_000)
                .filter(i -> holds(
                        Sweep.of(noisy(truth, random)).figures().maximumPowerW(),
                        truth.maximumPower().powerW()))
                .count();
        assertThat(inside).isBetween(930L, 1_000L);
    }

    @Test
    void refusesFewerThanFivePoints() {
        assertRefused(straight(List.of(10.0, 100.0, 1e3, 1e4)), SweepFault.TOO_FEW_POINTS, "in [5, ∞), not 4");
    }

    @Test
    void refusesOnePointReadFiveTimes() {
        assertRefused(Collections.nCopies(5, SweepPoint.exact(0.3, 1e-3)), SweepFault.WRONG_QUADRANT, "not 1");
    }

    @Test
    void refusesNoPoints() {
        assertRefused(List.of(), SweepFault.WRONG_QUADRANT, "in [3, ∞), not 0");
    }

    @Test
    void refusesPointsWithoutSpread() {
        assertRefused(straight(List.of(10.0, 10.5, 11.0, 11.5, 12.0, 12.5)), SweepFault.NO_SPREAD, "current");
        assertRefused(level(0.30, 0.31, 0.32, 0.318, 0.305), SweepFault.NO_SPREAD, "voltage");
    }

    @Test
    void refusesASweepOnTheWrongSideAndSaysSwapTheLeads() {
        var negative = straight(HALF_DECADES).stream()
                .map(point -> SweepPoint.exact(-point.voltageV(), -point.currentA()))
                .toList();
        assertRefused(negative, SweepFault.WRONG_QUADRANT, "swap the leads");
    }

    @Test
    void refusesNumbersThatAreNotFinite() {
        for (var bad : List.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY)) {
            var points = Stream.concat(straight(HALF_DECADES).stream(), Stream.of(SweepPoint.exact(0.1, bad)))
                    .toList();
            assertRefused(points, SweepFault.NOT_FINITE, "must lie in [-1e6, 1e6] V; A, not at 0.1 V; " + bad + " A");
        }
    }

    @Test
    void refusesACurrentThatRisesWithTheVoltage() {
        var rising = DoubleStream.of(0.1, 0.2, 0.3, 0.4, 0.5)
                .mapToObj(voltage -> SweepPoint.exact(voltage, voltage * voltage * 1e-3))
                .toList();
        assertRefused(rising, SweepFault.NOT_FALLING, "must fall as the voltage rises");
    }

    private static void assertRefused(List<SweepPoint> points, SweepFault fault, String part) {
        assertThatExceptionOfType(SweepRefused.class)
                .isThrownBy(() -> Sweep.of(points))
                .withMessageContaining(part)
                .satisfies(refusal -> assertThat(refusal.fault()).isEqualTo(fault));
    }

    private static void assertHolds(Estimate estimate, double truth) {
        assertThat(truth).isBetween(estimate.low() - 1e-12 * truth, estimate.high() + 1e-12 * truth);
    }

    private static boolean holds(Estimate estimate, double truth) {
        return truth >= estimate.low() && truth <= estimate.high();
    }

    private static Offset<Double> percent(Curve curve, String value, double percent) {
        return within(curve.value(value) * percent / 100);
    }

    private static List<SweepPoint> resistiveLoads(Curve curve) {
        return StreamSupport.stream(curve.values().get("resistive_loads").spliterator(), false)
                .map(load -> SweepPoint.exact(
                        ReferenceCurves.number(load.get("voltage_V")), ReferenceCurves.number(load.get("current_A"))))
                .toList();
    }

    /** Loads on a cell whose curve is the line from 1 mA to 0.5 V. */
    private static List<SweepPoint> straight(List<Double> loadsOhm) {
        return loadsOhm.stream()
                .map(load -> SweepPoint.exact(0.5 * load / (load + 500), 0.5 / (load + 500)))
                .toList();
    }

    private static List<SweepPoint> level(double... voltages) {
        return IntStream.range(0, voltages.length)
                .mapToObj(i -> SweepPoint.exact(voltages[i], 1e-3 / (1 << i)))
                .toList();
    }

    private static List<SweepPoint> reversed(List<SweepPoint> points) {
        var reversed = new ArrayList<>(points);
        Collections.reverse(reversed);
        return reversed;
    }

    /** A sweep in steps of a tenth of Voc, each reading off by 0.5 % (one standard deviation), and known to be so. */
    private static List<SweepPoint> noisy(Diode diode, SplittableRandom random) {
        return IntStream.rangeClosed(0, 10)
                .mapToObj(i -> diode.openCircuitVoltageV() * i / 10)
                .map(voltage -> noisy(voltage, diode.currentA(voltage), random))
                .toList();
    }

    private static SweepPoint noisy(double voltageV, double currentA, SplittableRandom random) {
        var shown = currentA * (1 + 0.005 * random.nextGaussian());
        return new SweepPoint(voltageV, shown, 0, 0.005 * Math.abs(currentA));
    }
}
