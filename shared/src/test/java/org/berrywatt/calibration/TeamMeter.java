package org.berrywatt.calibration;

import java.util.stream.IntStream;
import org.berrywatt.curve.Diode;
import org.berrywatt.curve.LoadBox;
import org.berrywatt.curve.Sweep;
import org.berrywatt.curve.SweepPoint;
import org.berrywatt.meter.AccuracyStatement;
import org.berrywatt.meter.CurrentRange;
import org.berrywatt.meter.Multimeter;
import org.berrywatt.normalise.LoadSweep;
import org.berrywatt.normalise.Shown;
import org.berrywatt.normalise.SpotReading;
import org.berrywatt.uncertainty.Estimate;

/**
 * A team's multimeter and load box: off by the same part of what they promise in all readings.
 *
 * @param name of the meter
 */
record TeamMeter(String name, SharedErrors errors) {
    private static final Multimeter LEAFLET = Multimeter.classroom();
    private static final LoadBox LOADS = new LoadBox(LoadBox.GOLD_RING, LEAFLET.inputResistanceOhm());
    private static final double FINE_RANGE_V = 0.2;
    private static final int COUNTS = 2_000;
    private static final double[] LOADS_OHM = {100, 220, 470, 1e3, 1.5e3, 2.2e3, 3.3e3, 4.7e3, 10e3, 22e3, 100e3};

    SpotReading spot(Diode cell) {
        var range = range(cell);
        var openV = voltageV(cell, Double.POSITIVE_INFINITY);
        return new SpotReading(
                shown(through(cell, range.resistanceOhm()), LEAFLET.current(), range.resolutionA(), "A"),
                shown(openV, LEAFLET.voltage(), stepV(openV), "V"),
                range.resistanceOhm(),
                LEAFLET.inputResistanceOhm());
    }

    /** The covered cell, which gives nothing, in the range of the lit one. */
    Shown dark(Diode cell) {
        return shown(0, LEAFLET.current(), range(cell).resolutionA(), "A");
    }

    LoadSweep sweep(Diode cell) {
        return LoadSweep.of(Sweep.of(IntStream.range(0, LOADS_OHM.length + 1)
                .mapToObj(i -> i < LOADS_OHM.length ? point(cell, i) : open(cell))
                .toList()));
    }

    private SweepPoint point(Diode cell, int load) {
        var nominalOhm = LOADS_OHM[load];
        var ohm = nominalOhm * (1 + LoadBox.GOLD_RING * errors.within(name + " load " + load));
        return LOADS.atVoltage(nominalOhm, estimate(voltageV(cell, ohm)));
    }

    private SweepPoint open(Diode cell) {
        return LOADS.atVoltage(Double.POSITIVE_INFINITY, estimate(voltageV(cell, Double.POSITIVE_INFINITY)));
    }

    private Estimate estimate(double voltageV) {
        var step = stepV(voltageV);
        return LEAFLET.voltageV(shown(voltageV, LEAFLET.voltage(), step, "V").value(), step);
    }

    private static double stepV(double voltageV) {
        return (voltageV < 0.97 * FINE_RANGE_V ? FINE_RANGE_V : 10 * FINE_RANGE_V) / COUNTS;
    }

    private Shown shown(double value, AccuracyStatement promise, double step, String unit) {
        var off = value + errors.within(name + " " + unit) * promise.halfWidth(value, step);
        var display = Math.rint(off / step) * step;
        return new Shown(display, promise.halfWidth(display, step), step);
    }

    private static CurrentRange range(Diode cell) {
        return LEAFLET.currentRanges().stream()
                .filter(range -> through(cell, range.resistanceOhm()) * 1.02 < range.fullScaleA())
                .findFirst()
                .orElseThrow();
    }

    /** Current into a resistance. */
    private static double through(Diode cell, double ohm) {
        return new Diode(
                        cell.photocurrentA(),
                        cell.saturationCurrentA(),
                        cell.idealityFactor(),
                        cell.seriesResistanceOhm() + ohm,
                        cell.shuntResistanceOhm(),
                        cell.temperatureC())
                .shortCircuitCurrentA();
    }

    /** Voltage across a load with the meter beside it. */
    private static double voltageV(Diode cell, double ohm) {
        var besideOhm = 1 / (1 / ohm + 1 / LEAFLET.inputResistanceOhm());
        return besideOhm * through(cell, besideOhm);
    }
}
