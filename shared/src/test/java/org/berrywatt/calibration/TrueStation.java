package org.berrywatt.calibration;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.berrywatt.light.DyeFamily;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.light.Instrument;
import org.berrywatt.light.Lamp;
import org.berrywatt.light.StationLight;
import org.berrywatt.light.TimedReading;
import org.berrywatt.normalise.LightAtCell;
import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Shape;

/**
 * A station whose light wanders while the class reads its lux now and then with the day's one lux meter. That meter, and what
 * lamp and dye make of it, are off by the same factor for every cell.
 *
 * @param litWm2 sunlight that shows the same lux, minute by minute
 * @param readings in lx, as displayed
 */
record TrueStation(
        String name,
        Lamp lamp,
        double usualWm2,
        List<Double> litWm2,
        List<TimedReading> readings,
        SharedErrors errors) {
    private static final Instant START = Instant.parse("2026-05-12T08:00:00Z");
    private static final double STEP_LX = 10;

    static TrueStation of(StationKind kind, SharedErrors errors, SplittableRandom random) {
        var litWm2 = wandering(kind, random);
        var displayed = IntStream.iterate(0, minute -> minute <= StationKind.MINUTES, minute -> minute + kind.minutes())
                .mapToObj(minute -> new TimedReading(at(minute), displayed(litWm2.get(minute), errors)))
                .toList();
        return new TrueStation(kind.toString(), kind.lamp(), kind.usualWm2(), litWm2, displayed, errors);
    }

    private static List<Double> wandering(StationKind kind, SplittableRandom random) {
        double[] litWm2 = new double[StationKind.MINUTES + 1];
        litWm2[0] = kind.usualWm2() * Math.exp(0.1 * random.nextGaussian());
        for (int minute = 1; minute < litWm2.length; minute++) {
            litWm2[minute] =
                    litWm2[minute - 1] * Math.exp(kind.driftPerRootHour() / Math.sqrt(60) * random.nextGaussian());
        }
        return Arrays.stream(litWm2).boxed().toList();
    }

    private static Estimate displayed(double litWm2, SharedErrors errors) {
        var probe = EffectiveIrradiance.of(Lamp.SUN, Instrument.LUX_METER, DyeFamily.OTHER, Estimate.exact(1), true);
        var shownWm2 = litWm2 / errors.factor("lux meter", probe.calibration().relativeUncertainty());
        var lux = Math.rint(shownWm2 * probe.sunlightLxPerWm2() / STEP_LX) * STEP_LX;
        return new Estimate(lux, Shape.RECTANGULAR.standardUncertainty(STEP_LX / 2));
    }

    /** What the class knows of the light at a minute. */
    LightAtCell known(DyeFamily dye, int minute) {
        var light = StationLight.at(lamp, readings, at(minute));
        return new LightAtCell(
                EffectiveIrradiance.of(lamp, Instrument.LUX_METER, dye, light.raw(), true), name, light.stale());
    }

    /** The light at a minute as it is for a dye. */
    double effectiveWm2(DyeFamily dye, int minute) {
        var mismatch = known(dye, minute).irradiance().mismatch();
        return litWm2.get(minute)
                * mismatch.value()
                * errors.factor(lamp + " for " + dye, mismatch.relativeUncertainty());
    }

    private static Instant at(int minute) {
        return START.plus(Duration.ofMinutes(minute));
    }
}
