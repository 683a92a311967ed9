package org.berrywatt.calibration;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.uncertainty.Interval;

/** Two cells of a day, compared trial by trial. */
record Pair(ReadCell one, ReadCell other, Interval difference) {

    /** All cells of one station with the next one of it, each cell at most twice. */
    static Stream<Pair> ofOneStation(List<ReadCell> cells) {
        return cells.stream()
                .map(ReadCell::station)
                .distinct()
                .flatMap(station -> neighbours(cells.stream()
                        .filter(cell -> cell.station().equals(station))
                        .toList()));
    }

    private static Stream<Pair> neighbours(List<ReadCell> cells) {
        return IntStream.range(1, cells.size()).mapToObj(i -> of(cells.get(i - 1), cells.get(i)));
    }

    private static Pair of(ReadCell one, ReadCell other) {
        return new Pair(one, other, one.difference(other));
    }

    boolean isCovered() {
        return difference.contains(one.truthWm2() - other.truthWm2());
    }

    /** Width of the difference's interval over that of two cells which share nothing. */
    double sharpening() {
        return difference.width()
                / Math.hypot(one.interval().width(), other.interval().width());
    }
}
