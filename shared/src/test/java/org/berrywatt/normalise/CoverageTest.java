package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import org.berrywatt.curve.Diode;
import org.berrywatt.curve.Sweep;
import org.berrywatt.curve.SweepPoint;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Simulated home-made cells with a known truth, measured with errors of the stated size: how many lie in the interval that the
 * Wall shows. With a sweep it is 95 % to within what 2,000 cells can tell; without one, bounds stand in for what nobody
 * measured, and the interval may only be too wide.
 */
class CoverageTest {
    private static final int CELLS = 2_000;
    private static final int TRIALS = 2_000;
    private static final double AREA_M2 = 2e-4;

    @ParameterizedTest
    @ValueSource(doubles = {0.55, 1, 1.8})
    void holdsTheTruthInNineteenOfTwentySweeps(double ratio) {
        assertThat(covered(ratio, CoverageTest::sweep)).isBetween(0.93, 0.97);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.4, 1, 2.5})
    void holdsTheTruthWithoutASweepToo(double ratio) {
        assertThat(covered(ratio, CoverageTest::spot)).isGreaterThan(0.93);
    }

    /** Where bounds take over from the fitted diode, 95 % is the least: 0.93 to what 500 cells can tell. */
    @ParameterizedTest
    @ValueSource(doubles = {0.16, 3, 10})
    void holdsTheTruthFarFromTheReferenceToo(double ratio) {
        assertThat(covered(ratio, 500, CoverageTest::sweep)).isGreaterThan(0.91);
        assertThat(covered(ratio, 500, CoverageTest::spot)).isGreaterThan(0.91);
    }

    private static double covered(double ratio, BiFunction<Diode, SplittableRandom, UnderLight> measure) {
        return covered(ratio, CELLS, measure);
    }

    private static double covered(double ratio, int cells, BiFunction<Diode, SplittableRandom, UnderLight> measure) {
        var random = new SplittableRandom(20_260_512);
        var inside = IntStream.range(0, cells)
                .filter(i -> isCovered(ratio, measure, random))
                .count();
        return (double) inside / cells;
    }

    private static boolean isCovered(
            double ratio, BiFunction<Diode, SplittableRandom, UnderLight> measure, SplittableRandom random) {
        var underLamp = anyCell(random);
        var truthWm2 = underLamp.underLight(ratio).maximumPower().powerW() / AREA_M2;
        var light = Measured.sunlight(100 / ratio);
        var mismatch = light.irradiance().mismatch().standardUncertainty();
        var brighter = (1 + 0.01 * random.nextGaussian())
                * (1 + 0.05 * random.nextGaussian())
                * (1 + 0.05 * random.nextGaussian())
                * (1 + mismatch * random.nextGaussian());
        var contact = 1 + 0.06 * random.nextGaussian();
        var measured = measure.apply(weakened(underLamp.underLight(brighter), contact), random);
        var area = AREA_M2 * (1 + 0.05 * random.nextGaussian());
        var cell = Measured.cell(measured, null, new Estimate(area, 0.05 * area), light);
        var result = Normalisation.of(cell, Measured.REFERENCE)
                .interval(Measurand.POWER_DENSITY, new Deviates(random.nextLong(), TRIALS), "cell");
        return truthWm2 >= result.low() && truthWm2 <= result.high();
    }

    /** Badly set clips, as the model has them: current and with it the power are off by a factor. */
    private static Diode weakened(Diode diode, double factor) {
        return new Diode(
                diode.photocurrentA() * factor,
                diode.saturationCurrentA() * factor,
                diode.idealityFactor(),
                diode.seriesResistanceOhm() / factor,
                diode.shuntResistanceOhm() / factor,
                diode.temperatureC());
    }

    private static UnderLight spot(Diode diode, SplittableRandom random) {
        return new SpotReading(
                read(diode.shortCircuitCurrentA(), random),
                read(diode.openCircuitVoltageV(), random),
                0,
                Double.POSITIVE_INFINITY);
    }

    private static Shown read(double value, SplittableRandom random) {
        var shown = value * (1 + random.nextDouble(-0.01, 0.01));
        return new Shown(shown, 0.01 * shown, 0.001 * shown);
    }

    /** Eleven points in even steps of voltage, each reading off by up to 1 %. */
    private static UnderLight sweep(Diode diode, SplittableRandom random) {
        var points = IntStream.rangeClosed(1, 11)
                .mapToDouble(i -> diode.openCircuitVoltageV() * i / 12)
                .mapToObj(voltage -> point(voltage, diode.currentA(voltage), random))
                .toList();
        return LoadSweep.of(Sweep.of(points));
    }

    private static SweepPoint point(double voltageV, double currentA, SplittableRandom random) {
        return new SweepPoint(
                voltageV * (1 + random.nextDouble(-0.005, 0.005)),
                currentA * (1 + random.nextDouble(-0.01, 0.01)),
                0.005 * voltageV / Math.sqrt(3),
                0.01 * currentA / Math.sqrt(3));
    }

    /** From leaky to decent, as it is under the lamp: Voc 0.2 to 0.5 V, 50 to 500 µA. */
    private static Diode anyCell(SplittableRandom random) {
        var photocurrentA = 50e-6 * Math.pow(10, random.nextDouble());
        var idealityFactor = random.nextDouble(1.3, 2.8);
        var voltageV = random.nextDouble(0.2, 0.5);
        var saturationA = photocurrentA / Math.expm1(voltageV / (idealityFactor * 0.0257));
        var loadOhm = voltageV / photocurrentA;
        return new Diode(
                photocurrentA,
                saturationA,
                idealityFactor,
                loadOhm * random.nextDouble(0.02, 0.3),
                loadOhm * random.nextDouble(2, 20),
                25);
    }
}
