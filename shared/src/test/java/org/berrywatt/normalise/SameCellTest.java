package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.berrywatt.curve.Diode;
import org.berrywatt.curve.Sweep;
import org.berrywatt.curve.SweepPoint;
import org.berrywatt.meter.AccuracyStatement;
import org.berrywatt.quantity.Amount;
import org.berrywatt.quantity.Quantity;
import org.berrywatt.quantity.TypedNumber;
import org.berrywatt.quantity.Understanding.Understood;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ways of writing down or building the same cell that must not change its result. */
class SameCellTest {
    private static final AccuracyStatement METER = new AccuracyStatement(0.5, 2);
    private static final Diode CELL = new Diode(100e-6, 1e-8, 2, 500, 30_000, 25);

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"312,5 mV; 92,5 µA", "312.5 mV; 92.5 uA", "0.3125 V; 0,0925 mA", "0,3125 V; 92.5 μA"})
    void staysTheSameInAnyUnitAndWithEitherDecimalSign(String voltage, String current) {
        assertSame(result(voltage, current), result("312.5 mV", "92.5 uA"), 0);
    }

    @ParameterizedTest
    @CsvSource({"0.5", "2", "7"})
    void keepsItsDensitiesWithASweepWhenAreaAndCurrentGrowAlike(double factor) {
        var larger = swept(points(CELL, factor), factor, 60);
        assertSame(larger, swept(points(CELL, 1), 1, 60), 1e-6);
    }

    @Test
    void doesNotCareInWhichOrderTheRowsOfASweepWereTyped() {
        var shuffled = new ArrayList<>(points(CELL, 1));
        Collections.shuffle(shuffled, new Random(20));
        assertSame(swept(shuffled, 1, 60), swept(points(CELL, 1), 1, 60), 0);
    }

    @Test
    void keepsItsCurrentDensityWithASweepWhenLightAndPhotocurrentGrowAlike() {
        // a cell without series resistance and shunt: its photocurrent is all that the light moves
        var ideal = new Diode(100e-6, 1e-9, 2, 0, 1e9, 25);
        var dim = swept(points(ideal, 1), 1, 100);
        var bright = swept(points(ideal.underLight(2), 1), 1, 200);
        assertThat(bright.currentDensityAm2().value())
                .isCloseTo(
                        dim.currentDensityAm2().value(),
                        within(1e-3 * dim.currentDensityAm2().value()));
        assertThat(bright.openCircuitVoltageV().value())
                .isCloseTo(dim.openCircuitVoltageV().value(), within(5e-3));
    }

    private static void assertSame(Result found, Result expected, double part) {
        var pairs = List.of(
                List.of(
                        found.powerDensityWm2().value(),
                        expected.powerDensityWm2().value()),
                List.of(
                        found.powerDensityWm2().standardUncertainty(),
                        expected.powerDensityWm2().standardUncertainty()),
                List.of(
                        found.currentDensityAm2().value(),
                        expected.currentDensityAm2().value()),
                List.of(
                        found.openCircuitVoltageV().value(),
                        expected.openCircuitVoltageV().value()),
                List.of(found.fillFactor().value(), expected.fillFactor().value()));
        assertThat(pairs)
                .allSatisfy(pair ->
                        assertThat(pair.get(0)).isCloseTo(pair.get(1), within(part * Math.abs(pair.get(1)))));
        assertThat(found.notes())
                .extracting(Note::key)
                .isEqualTo(expected.notes().stream().map(Note::key).toList());
    }

    private static Result result(String voltage, String current) {
        var spot = new SpotReading(shown(current, Quantity.CURRENT), shown(voltage, Quantity.VOLTAGE), 100, 10e6);
        return Normalisation.of(Measured.cell(spot, null, Measured.AREA, Measured.sunlight(60)), Measured.REFERENCE);
    }

    private static Shown shown(String text, Quantity quantity) {
        var amount = ((Understood<Amount>) TypedNumber.read(text, null, Set.of(quantity))).meaning();
        return new Shown(
                amount.valueSi(), METER.halfWidth(amount.valueSi(), amount.resolutionSi()), amount.resolutionSi());
    }

    private static Result swept(List<SweepPoint> points, double areaFactor, double irradianceWm2) {
        var area = new Estimate(areaFactor * 2e-4, areaFactor * 1e-5);
        var cell = Measured.cell(LoadSweep.of(Sweep.of(points)), null, area, Measured.sunlight(irradianceWm2));
        return Normalisation.of(cell, Measured.REFERENCE);
    }

    /** A cell of a larger area gives the larger current at the same voltage; read to 0.5 %. */
    private static List<SweepPoint> points(Diode diode, double areaFactor) {
        return IntStream.rangeClosed(0, 12)
                .mapToObj(i -> diode.openCircuitVoltageV() * i / 12)
                .map(voltageV -> point(voltageV, areaFactor * diode.currentA(voltageV), areaFactor * 100e-6))
                .toList();
    }

    private static SweepPoint point(double voltageV, double currentA, double scaleA) {
        return new SweepPoint(voltageV, currentA, 1e-3, 0.005 * scaleA);
    }
}
