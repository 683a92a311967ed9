package org.berrywatt.curve;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Between which powers the peak of a curve that bends downwards lies: not below its chords, not above their lengthenings.
 *
 * @param lowW in [0, highW]
 */
record PowerBounds(double lowW, double highW) {

    static PowerBounds of(List<SweepPoint> along) {
        var lowW = IntStream.range(1, along.size())
                .mapToDouble(i -> underChord(along.get(i - 1), along.get(i)))
                .max()
                .orElse(0);
        var highW = DoubleStream.concat(
                        IntStream.range(1, along.size()).mapToDouble(i -> underNeighbours(along, i - 1)), ends(along))
                .max()
                .orElse(lowW);
        return new PowerBounds(lowW, Math.max(lowW, highW));
    }

    /** A peak anywhere between the bounds is rectangular around their middle; a peak off the middle owes the distance too. */
    double standardUncertaintyW(double peakW) {
        return Math.max(peakW - lowW, highW - peakW) / Math.sqrt(3);
    }

    private static double underChord(SweepPoint from, SweepPoint to) {
        return Line.through(from, to).highestPowerW(from.voltageV(), to.voltageV());
    }

    private static double underNeighbours(List<SweepPoint> along, int from) {
        var start = along.get(from);
        var end = along.get(from + 1);
        var before = from > 0 ? Line.through(along.get(from - 1), start) : Line.level(start);
        if (from + 2 == along.size()) {
            return before.highestPowerW(start.voltageV(), end.voltageV());
        }
        var after = Line.through(end, along.get(from + 2));
        var meetingV = before.meetingV(after, start.voltageV(), end.voltageV());
        return Math.max(
                before.highestPowerW(start.voltageV(), meetingV), after.highestPowerW(meetingV, end.voltageV()));
    }

    /** Before the first point and past the last, where the sweep does not reach the axes. */
    private static DoubleStream ends(List<SweepPoint> along) {
        var last = along.size() - 1;
        var first = Line.through(along.get(0), along.get(1));
        var end = Line.through(along.get(last - 1), along.get(last));
        return DoubleStream.of(
                first.highestPowerW(0, Math.max(0, along.get(0).voltageV())),
                end.highestPowerW(along.get(last).voltageV(), end.zeroCurrentV()));
    }
}
