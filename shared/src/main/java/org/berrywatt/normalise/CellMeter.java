package org.berrywatt.normalise;

import java.util.List;
import java.util.Objects;
import org.berrywatt.curve.LoadBox;
import org.berrywatt.curve.Sweep;
import org.berrywatt.curve.SweepPoint;
import org.berrywatt.meter.Display;
import org.berrywatt.meter.Multimeter;
import org.berrywatt.uncertainty.Estimate;

/**
 * What a multimeter's display says of a cell, once accuracy, last digit, burden and input resistance of the meter and the
 * tolerance of the loads have come in. The one way from a display to a measurement.
 */
public record CellMeter(Multimeter meter, LoadBox loads) {

    /** A cheap meter and resistors of the gold ring. */
    public static CellMeter classroom() {
        return with(Multimeter.classroom());
    }

    static CellMeter with(Multimeter meter) {
        return new CellMeter(meter, new LoadBox(LoadBox.GOLD_RING, meter.inputResistanceOhm()));
    }

    public Shown current(Display display) {
        return new Shown(
                display.value(),
                meter.current().halfWidth(display.value(), display.resolution()),
                display.resolution());
    }

    public Estimate currentA(Display display) {
        return meter.currentA(display.value(), display.resolution());
    }

    public Estimate voltageV(Display display) {
        return meter.voltageV(display.value(), display.resolution());
    }

    /** Current and voltage read one after the other. */
    public SpotReading spot(Display current, Display voltage) {
        return new SpotReading(current(current), voltage(voltage), burdenOhm(current), meter.inputResistanceOhm());
    }

    /**
     * A load sweep of rows in any order.
     *
     * @throws org.berrywatt.curve.SweepRefused when it has no figures
     */
    public LoadSweep sweep(List<SweepRow> rows) {
        return LoadSweep.of(Sweep.of(rows.stream().map(this::point).toList()));
    }

    /** The point of the curve that a row was read at. */
    public SweepPoint point(SweepRow row) {
        if (row.current() == null) {
            return loads.atVoltage(loadOhm(row), voltageV(Objects.requireNonNull(row.voltage())));
        }
        if (row.voltage() == null) {
            return loads.atCurrent(loadOhm(row), burdenOhm(row.current()), currentA(row.current()));
        }
        return both(voltageV(row.voltage()), currentA(row.current()));
    }

    private static SweepPoint both(Estimate voltageV, Estimate currentA) {
        return new SweepPoint(
                voltageV.value(), currentA.value(), voltageV.standardUncertainty(), currentA.standardUncertainty());
    }

    private Shown voltage(Display display) {
        return new Shown(
                display.value(),
                meter.voltage().halfWidth(display.value(), display.resolution()),
                display.resolution());
    }

    private double burdenOhm(Display current) {
        return meter.rangeOf(current.value(), current.resolution()).resistanceOhm();
    }

    private static double loadOhm(SweepRow row) {
        return Objects.requireNonNull(row.loadOhm());
    }
}
