package org.berrywatt.server.leaderboard;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.leaderboard.MeasuredCell;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.reading.ReadingKind;
import org.berrywatt.server.reading.RecordedReading;
import org.jspecify.annotations.Nullable;

/**
 * Finds the reading of the day's control cell that belongs to another cell's reading: at the same station, within {@value
 * MeasuredCell#NEAR_MINUTES} minutes. A load sweep comes first, since it knows the fill factor; then the nearest in time, of
 * equally near ones the later.
 */
record ControlReadings(DayRecord day, CellJudge judge) {

    private static final Duration NEAR = Duration.ofMinutes(MeasuredCell.NEAR_MINUTES);

    /** Null while the day has no control cell. */
    MeasuredCell.@Nullable Control near(Gathered cell) {
        return day.control()
                .map(control -> new MeasuredCell.Control(cell.evidence()
                        .underLight()
                        .flatMap(reading -> nearest(control, reading))
                        .map(found -> judge.judge(at(control, found)))
                        .filter(Judged.Counts.class::isInstance)
                        .map(judged -> ((Judged.Counts) judged).reading())
                        .orElse(null)))
                .orElse(null);
    }

    private Optional<RecordedReading> nearest(Cell control, RecordedReading reading) {
        return day.readingsOf(control).stream()
                .filter(other -> other.kind().isUnderLight())
                .filter(other -> other.stationId() != null && other.stationId().equals(reading.stationId()))
                .filter(other -> apart(other, reading).compareTo(NEAR) <= 0)
                .min(Comparator.comparing((RecordedReading other) -> other.kind() != ReadingKind.SWEEP)
                        .thenComparing(other -> apart(other, reading))
                        .thenComparing(RecordedReading::readAt, Comparator.reverseOrder())
                        .thenComparing(RecordedReading::id));
    }

    /** As if it were the only reading under light. */
    private Gathered at(Cell control, RecordedReading only) {
        List<RecordedReading> readings = day.readingsOf(control).stream()
                .flatMap(reading ->
                        reading.kind().isUnderLight() && !reading.equals(only) ? Stream.empty() : Stream.of(reading))
                .toList();
        return Gathered.of(control, day, readings);
    }

    private static Duration apart(RecordedReading one, RecordedReading other) {
        return Duration.between(one.readAt(), other.readAt()).abs();
    }
}
