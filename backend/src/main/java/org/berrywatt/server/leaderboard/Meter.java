package org.berrywatt.server.leaderboard;

import java.util.List;
import java.util.Objects;
import org.berrywatt.curve.Sweep;
import org.berrywatt.meter.AccuracyStatement;
import org.berrywatt.meter.Multimeter;
import org.berrywatt.normalise.LoadSweep;
import org.berrywatt.normalise.Shown;
import org.berrywatt.normalise.SpotReading;
import org.berrywatt.normalise.UnderLight;
import org.berrywatt.reading.Terminals;
import org.berrywatt.server.reading.Measured;
import org.berrywatt.server.reading.ReadingKind;
import org.berrywatt.server.reading.RecordedPoint;
import org.berrywatt.server.reading.RecordedReading;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/** What the class's multimeters add to the numbers that they show: accuracy, last digit, burden. */
final class Meter {

    private static final Multimeter METER = Multimeter.classroom();
    private static final SweepMeter SWEEP = SweepMeter.with(METER);

    private Meter() {}

    static Terminals terminals(RecordedReading reading) {
        return new Terminals(voltageV(reading.voltage()), currentA(reading.current()));
    }

    /** @throws org.berrywatt.curve.SweepRefused when a load sweep has no figures */
    static UnderLight underLight(RecordedReading reading) {
        return reading.kind() == ReadingKind.SWEEP ? sweep(reading.points()) : spot(reading);
    }

    static Shown shownCurrent(Measured current) {
        return shown(METER.current(), current);
    }

    private static SpotReading spot(RecordedReading reading) {
        Measured current = Objects.requireNonNull(reading.current());
        double burdenOhm =
                METER.rangeOf(current.valueSi(), current.resolutionSi()).resistanceOhm();
        return new SpotReading(
                shownCurrent(current),
                shown(METER.voltage(), Objects.requireNonNull(reading.voltage())),
                burdenOhm,
                METER.inputResistanceOhm());
    }

    private static LoadSweep sweep(List<RecordedPoint> points) {
        return LoadSweep.of(Sweep.of(points.stream().map(SWEEP::point).toList()));
    }

    private static @Nullable Estimate voltageV(@Nullable Measured shown) {
        return shown == null ? null : METER.voltageV(shown.valueSi(), shown.resolutionSi());
    }

    private static @Nullable Estimate currentA(@Nullable Measured shown) {
        return shown == null ? null : METER.currentA(shown.valueSi(), shown.resolutionSi());
    }

    private static Shown shown(AccuracyStatement accuracy, Measured measured) {
        double halfWidth = accuracy.halfWidth(measured.valueSi(), measured.resolutionSi());
        return new Shown(measured.valueSi(), halfWidth, measured.resolutionSi());
    }
}
