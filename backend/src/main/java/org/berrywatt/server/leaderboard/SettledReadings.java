package org.berrywatt.server.leaderboard;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.leaderboard.CurrentRetention;
import org.berrywatt.leaderboard.MeasuredCell;
import org.berrywatt.reading.Retention;
import org.berrywatt.reading.Retention.Aged;
import org.berrywatt.server.reading.RecordedReading;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/** Finds the reading at which a cell had settled, as it was judged by what was read under light until then. */
record SettledReadings(DayRecord day, CellJudge judge) {

    private static final Duration LEAST_AGE = Duration.ofMinutes(CurrentRetention.LEAST_AGE_MINUTES);

    /** Null while the cell has not settled, or nobody can tell. */
    MeasuredCell.@Nullable Settled of(Gathered cell) {
        return cell.history().settledAt().flatMap(at -> settled(cell, at)).orElse(null);
    }

    /** The course of its current since then, by readings an hour later or more; empty for a cell without any. */
    Optional<Retention> retention(Gathered cell) {
        return cell.history().settledAt().flatMap(at -> retention(cell, at));
    }

    private Optional<Retention> retention(Gathered cell, Instant settledAt) {
        Gathered then = until(cell, settledAt);
        Optional<Estimate> settled = current(then).filter(it -> it.value() > 0);
        List<Aged> later =
                then.underLightAt().stream().flatMap(from -> later(cell, from)).toList();
        return settled.filter(it -> !later.isEmpty()).map(it -> Retention.of(it, later));
    }

    private Stream<Aged> later(Gathered cell, Instant from) {
        return day.readingsOf(cell.cell()).stream()
                .filter(reading -> reading.kind().isUnderLight())
                .map(reading -> until(cell, reading.readAt()))
                .distinct()
                .flatMap(then -> aged(then, from).stream());
    }

    private Optional<Aged> aged(Gathered then, Instant from) {
        return then.underLightAt()
                .map(at -> Duration.between(from, at))
                .filter(age -> age.compareTo(LEAST_AGE) >= 0)
                .flatMap(age -> current(then).map(current -> new Aged(age, current)));
    }

    private Optional<Estimate> current(Gathered then) {
        return judge.judge(then) instanceof Judged.Counts counts
                ? Optional.of(counts.result().currentDensityAm2())
                : Optional.empty();
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
