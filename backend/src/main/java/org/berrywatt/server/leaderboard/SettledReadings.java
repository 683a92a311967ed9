package org.berrywatt.server.leaderboard;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.berrywatt.leaderboard.MeasuredCell;
import org.berrywatt.server.reading.RecordedReading;
import org.jspecify.annotations.Nullable;

/** Finds the reading at which a cell had settled, as it was judged by what was read under light until then. */
record SettledReadings(DayRecord day, CellJudge judge) {

    /** Null while the cell has not settled, or nobody can tell. */
    MeasuredCell.@Nullable Settled of(Gathered cell) {
        return cell.history().settledAt().flatMap(at -> settled(cell, at)).orElse(null);
    }

    private Optional<MeasuredCell.Settled> settled(Gathered cell, Instant at) {
        Gathered then = until(cell, at);
        return judge.judge(then) instanceof Judged.Counts counts
                ? then.underLightAt()
                        .flatMap(from -> cell.underLightAt()
                                .filter(now -> !now.isBefore(from))
                                .map(now -> new MeasuredCell.Settled(counts.reading(), Duration.between(from, now))))
                : Optional.empty();
    }

    private Gathered until(Gathered cell, Instant at) {
        List<RecordedReading> readings = day.readingsOf(cell.cell()).stream()
                .filter(reading ->
                        !reading.kind().isUnderLight() || !reading.readAt().isAfter(at))
                .toList();
        return Gathered.of(cell.cell(), day, readings);
    }
}
