package org.berrywatt.server.leaderboard;

import java.util.Objects;
import org.berrywatt.curve.LoadBox;
import org.berrywatt.curve.SweepPoint;
import org.berrywatt.meter.Multimeter;
import org.berrywatt.server.reading.Measured;
import org.berrywatt.server.reading.RecordedPoint;
import org.berrywatt.uncertainty.Estimate;

/** Makes points of a curve of the rows of a load sweep, which stay as they were read: loads and meter come in here. */
record SweepMeter(Multimeter meter, LoadBox loads) {

    static SweepMeter with(Multimeter meter) {
        return new SweepMeter(meter, new LoadBox(LoadBox.GOLD_RING, meter.inputResistanceOhm()));
    }

    SweepPoint point(RecordedPoint row) {
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

    private static double loadOhm(RecordedPoint row) {
        return Objects.requireNonNull(row.loadOhm());
    }

    private double burdenOhm(Measured current) {
        return meter.rangeOf(current.valueSi(), current.resolutionSi()).resistanceOhm();
    }

    private Estimate voltageV(Measured shown) {
        return meter.voltageV(shown.valueSi(), shown.resolutionSi());
    }

    private Estimate currentA(Measured shown) {
        return meter.currentA(shown.valueSi(), shown.resolutionSi());
    }
}
