package org.berrywatt.server.leaderboard;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.berrywatt.meter.Display;
import org.berrywatt.normalise.CellMeter;
import org.berrywatt.normalise.Shown;
import org.berrywatt.normalise.SweepRow;
import org.berrywatt.normalise.UnderLight;
import org.berrywatt.reading.Covered;
import org.berrywatt.reading.DarkThresholds;
import org.berrywatt.reading.LeadSwap;
import org.berrywatt.reading.LightToggles;
import org.berrywatt.reading.LightToggles.Toggle;
import org.berrywatt.reading.Terminals;
import org.berrywatt.server.reading.Measured;
import org.berrywatt.server.reading.ReadingKind;
import org.berrywatt.server.reading.RecordedPoint;
import org.berrywatt.server.reading.RecordedReading;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/** Recorded readings as the class's multimeters meant them. */
final class Meter {

    private static final CellMeter METER = CellMeter.classroom();

    private Meter() {}

    static Terminals terminals(RecordedReading reading) {
        return new Terminals(voltageV(reading.voltage()), currentA(reading.current()));
    }

    /** A dark check, with the leads one way or both. */
    static Covered covered(RecordedReading dark) {
        return new Covered(
                terminals(dark),
                swap(dark.voltage(), voltageV(dark.voltage()), dark.swappedVoltage(), voltageV(dark.swappedVoltage())),
                swap(dark.current(), currentA(dark.current()), dark.swappedCurrent(), currentA(dark.swappedCurrent())));
    }

    private static @Nullable LeadSwap swap(
            @Nullable Measured straight,
            @Nullable Estimate straightRead,
            @Nullable Measured swapped,
            @Nullable Estimate swappedRead) {
        return straight == null || straightRead == null || swapped == null || swappedRead == null
                ? null
                : new LeadSwap(straightRead, swappedRead, Math.max(straight.resolutionSi(), swapped.resolutionSi()));
    }

    /** @throws org.berrywatt.curve.SweepRefused when a load sweep has no figures */
    static UnderLight underLight(RecordedReading reading) {
        return reading.kind() == ReadingKind.SWEEP
                ? METER.sweep(reading.points().stream().map(Meter::row).toList())
                : METER.spot(
                        display(Objects.requireNonNull(reading.current())),
                        display(Objects.requireNonNull(reading.voltage())));
    }

    /** Covered and open in turn. */
    static LightToggles toggles(RecordedReading reading) {
        List<RecordedPoint> points = reading.points();
        List<Toggle> series = IntStream.range(0, points.size())
                .mapToObj(at -> new Toggle(at % 2 == 1, toggle(points.get(at))))
                .toList();
        return LightToggles.of(series, DarkThresholds.usual());
    }

    private static Estimate toggle(RecordedPoint point) {
        Estimate voltageV = voltageV(point.voltage());
        return voltageV == null ? Objects.requireNonNull(currentA(point.current())) : voltageV;
    }

    static Shown shownCurrent(Measured current) {
        return METER.current(display(current));
    }

    private static SweepRow row(RecordedPoint row) {
        return new SweepRow(row.loadOhm(), displayed(row.voltage()), displayed(row.current()));
    }

    private static @Nullable Estimate voltageV(@Nullable Measured shown) {
        return shown == null ? null : METER.voltageV(display(shown));
    }

    private static @Nullable Estimate currentA(@Nullable Measured shown) {
        return shown == null ? null : METER.currentA(display(shown));
    }

    private static @Nullable Display displayed(@Nullable Measured shown) {
        return shown == null ? null : display(shown);
    }

    private static Display display(Measured shown) {
        return new Display(shown.valueSi(), shown.resolutionSi());
    }
}
