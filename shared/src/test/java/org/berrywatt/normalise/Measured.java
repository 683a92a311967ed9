package org.berrywatt.normalise;

import java.util.List;
import org.berrywatt.curve.SweepFigures;
import org.berrywatt.light.DyeFamily;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.light.Instrument;
import org.berrywatt.light.Lamp;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/** Measurements for tests, each a small change of one cell: 100 µA and 0.4 V from 2 cm² in 100 W/m² of sunlight. */
final class Measured {
    static final Reference REFERENCE = new Reference(100, 4e-4);
    static final Estimate AREA = new Estimate(2e-4, 1e-5);

    private Measured() {}

    static CellMeasurement cell() {
        return cell(spot(100e-6, 0.4), null, AREA, sunlight(100));
    }

    static CellMeasurement in(LightAtCell light) {
        return cell(spot(100e-6, 0.4), null, AREA, light);
    }

    static CellMeasurement cell(UnderLight underLight, @Nullable Shown dark, Estimate area, LightAtCell light) {
        return new CellMeasurement(underLight, dark, area, light, "meter 1", null);
    }

    static SpotReading spot(double currentA, double voltageV) {
        return new SpotReading(shown(currentA), shown(voltageV), 0, Double.POSITIVE_INFINITY);
    }

    /** A reading with 1 % of accuracy and a last digit of a thousandth. */
    static Shown shown(double value) {
        return new Shown(value, 0.01 * Math.abs(value), 0.001 * Math.abs(value));
    }

    static LoadSweep sweep(double currentA, double voltageV, double fillFactor) {
        var power = currentA * voltageV * fillFactor;
        return new LoadSweep(
                new SweepFigures(
                        new Estimate(currentA, 0.01 * currentA),
                        new Estimate(voltageV, 0.01 * voltageV),
                        new Estimate(power, 0.02 * power),
                        new Estimate(fillFactor, 0.02),
                        0.2 * currentA / voltageV,
                        true,
                        null),
                List.of());
    }

    static LightAtCell sunlight(double irradianceWm2) {
        return light(Lamp.SUN, irradianceWm2, false);
    }

    static LightAtCell light(Lamp lamp, double irradianceWm2, boolean stale) {
        var reading = new Estimate(irradianceWm2, 0.01 * irradianceWm2);
        return new LightAtCell(
                EffectiveIrradiance.of(lamp, Instrument.SOLAR_METER, DyeFamily.ANTHOCYANIN, reading, false),
                "window bench",
                stale);
    }
}
