package org.berrywatt.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.curve.ReferenceCurves.Curve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HysteresisTest {
    /** A cell of the size of the trade's examples: 1 mA, 0.4 V. */
    private static final Diode CELL = new Diode(1e-3, 1e-7, 2, 80, 3_000, 25);

    /** From short to open circuit in steps of a tenth of the voltage. */
    private static final List<SweepPoint> TOWARDS_OPEN = IntStream.rangeClosed(0, 10)
            .mapToObj(i -> CELL.openCircuitVoltageV() * i / 10)
            .map(voltageV -> SweepPoint.exact(voltageV, CELL.currentA(voltageV)))
            .toList();

    @Test
    void isTheDifferenceOfBothPowersOverThatOfTheWayToShortCircuit() {
        // by hand: nine tenths of the power at every load, (0.9 - 1)/0.9 = -1/9
        var found = hysteresis(TOWARDS_OPEN, reversed(scaled(TOWARDS_OPEN, 0.9)));
        assertThat(found.index()).isCloseTo(-1.0 / 9, within(1e-12));
        assertThat(found.towardsShortW() / found.towardsOpenW()).isCloseTo(0.9, within(1e-12));
        assertThat(found.isNoted()).isTrue();
    }

    @Test
    void comparesAtTheVoltagesWhereThoseWereSet() {
        // by hand: nine tenths of the current at every voltage is nine tenths of every power, (0.9 - 1)/0.9 = -1/9
        var back = reversed(TOWARDS_OPEN).stream()
                .map(point -> SweepPoint.exact(point.voltageV(), 0.9 * point.currentA()))
                .toList();
        assertThat(hysteresis(TOWARDS_OPEN, back).index()).isCloseTo(-1.0 / 9, within(1e-9));
    }

    @Test
    void tellsTheWaysApartWhicheverComesFirst() {
        var found = hysteresis(reversed(scaled(TOWARDS_OPEN, 0.9)), TOWARDS_OPEN);
        assertThat(found.index()).isCloseTo(-1.0 / 9, within(1e-12));
    }

    @Test
    void isNotedBeyondFivePerCentOnly() {
        // common practice, no source: above 5 % wait longer at each load and report both
        assertThat(new Hysteresis(1.00e-3, 0.96e-3).isNoted()).isFalse();
        assertThat(new Hysteresis(1.00e-3, 0.94e-3).isNoted()).isTrue();
        assertThat(new Hysteresis(0.94e-3, 1.00e-3).isNoted()).isTrue();
    }

    @ParameterizedTest
    @MethodSource("org.berrywatt.curve.ReferenceCurves#dyeCells")
    void isNothingForACellThatSettlesAtOnce(Curve curve) {
        var points = exact(curve);
        assertThat(hysteresis(points, reversed(points)).index()).isCloseTo(0, within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("org.berrywatt.curve.ReferenceCurves#dyeCells")
    void comparesOnlyLoadsTakenBothWays(Curve curve) {
        // a closer grid on one way finds a higher peak of the very same curve
        var there = loads(curve.diode(), 10, 22, 100, 220, 1e3, 2.2e3, 1e4, 2.2e4, 1e5);
        var back = loads(curve.diode(), 1e5, 4.7e4, 2.2e4, 1e4, 4.7e3, 2.2e3, 1e3, 470, 220, 100, 47, 22, 10);
        assertThat(hysteresis(there, back).index()).isCloseTo(0, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("org.berrywatt.curve.ReferenceCurves#dyeCells")
    void isNotToldByAWayBackOverOtherLoads(Curve curve) {
        var there = loads(curve.diode(), 10, 47, 220, 1e3, 4.7e3, 2.2e4, 1e5);
        var back = loads(curve.diode(), 4.7e4, 1e4, 2.2e3, 470, 100, 22);
        assertThat(Sweep.of(joined(there, back)).figures().hysteresis()).isNull();
    }

    @Test
    void isNotFooledByTheLastDigit() {
        // 0.5 % of noise on every power: about one step of a display of 400 counts
        var random = new SplittableRandom(505);
        var noted = IntStream.range(0, 1_000)
                .mapToObj(i -> hysteresis(noisy(TOWARDS_OPEN, random), reversed(noisy(TOWARDS_OPEN, random))))
                .filter(Hysteresis::isNoted)
                .count();
        assertThat(noted).isZero();
    }

    @Test
    void isNotToldByASweepInOneDirection() {
        assertThat(Sweep.of(TOWARDS_OPEN).figures().hysteresis()).isNull();
        assertThat(Sweep.of(reversed(TOWARDS_OPEN)).figures().hysteresis()).isNull();
    }

    @Test
    void isNotToldByAWayBackThatMissesThePeak() {
        var back = reversed(TOWARDS_OPEN).subList(0, 3);
        assertThat(Sweep.of(joined(TOWARDS_OPEN, back)).figures().hysteresis()).isNull();
    }

    @Test
    void takesPointsAddedAroundThePeakAfterwardsForNoWayBack() {
        var added = TOWARDS_OPEN.subList(5, 10);
        assertThat(Sweep.of(joined(TOWARDS_OPEN, added)).figures().hysteresis()).isNull();
    }

    @Test
    void doesNotMindReadingsRepeatedAtALoad() {
        var thrice = TOWARDS_OPEN.stream()
                .flatMap(point -> Stream.of(point, scaled(point, 1.002), scaled(point, 0.998)))
                .toList();
        assertThat(Sweep.of(thrice).figures().hysteresis()).isNull();
        assertThat(hysteresis(thrice, reversed(thrice)).index()).isCloseTo(0, within(0.005));
    }

    private static Hysteresis hysteresis(List<SweepPoint> there, List<SweepPoint> back) {
        return Hysteresis.of(joined(there, back)).orElseThrow();
    }

    private static List<SweepPoint> joined(List<SweepPoint> there, List<SweepPoint> back) {
        return Stream.concat(there.stream(), back.stream()).toList();
    }

    private static List<SweepPoint> reversed(List<SweepPoint> points) {
        return IntStream.range(0, points.size())
                .mapToObj(i -> points.get(points.size() - 1 - i))
                .toList();
    }

    private static List<SweepPoint> exact(Curve curve) {
        return curve.points().stream()
                .map(point -> SweepPoint.exact(point[0], point[1]))
                .toList();
    }

    private static List<SweepPoint> loads(Diode diode, double... ohm) {
        return DoubleStream.of(ohm)
                .mapToObj(load -> withLoadInSeries(diode, load))
                .collect(Collectors.toList());
    }

    /** What a load sees is the short-circuit current of the cell with the load in series. */
    private static SweepPoint withLoadInSeries(Diode diode, double ohm) {
        var currentA = new Diode(
                        diode.photocurrentA(),
                        diode.saturationCurrentA(),
                        diode.idealityFactor(),
                        diode.seriesResistanceOhm() + ohm,
                        diode.shuntResistanceOhm(),
                        diode.temperatureC())
                .shortCircuitCurrentA();
        return SweepPoint.exact(currentA * ohm, currentA);
    }

    private static List<SweepPoint> scaled(List<SweepPoint> points, double factor) {
        return points.stream().map(point -> scaled(point, factor)).toList();
    }

    /** At the same load with a part of the power. */
    private static SweepPoint scaled(SweepPoint point, double factor) {
        return SweepPoint.exact(Math.sqrt(factor) * point.voltageV(), Math.sqrt(factor) * point.currentA());
    }

    private static List<SweepPoint> noisy(List<SweepPoint> points, SplittableRandom random) {
        return points.stream()
                .map(point -> scaled(point, 1 + 0.005 * random.nextGaussian()))
                .toList();
    }
}
