package org.berrywatt.server.leaderboard;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.UUID;
import java.util.function.Supplier;
import org.berrywatt.leaderboard.MeasuredCell;
import org.berrywatt.leaderboard.Metric;
import org.berrywatt.leaderboard.PowerDensity;
import org.berrywatt.leaderboard.Score;
import org.berrywatt.normalise.Reference;
import org.berrywatt.uncertainty.Deviates;
import org.springframework.stereotype.Component;

/**
 * Remembers what became of a cell's records. Whoever asks again about equal records gets the same answer without the work; a
 * record that changed is another question, so nothing is ever out of date.
 */
@Component
class KnownCells {

    /** A result with its trials takes some 80 kB. */
    private static final int MOST = 400;

    private final Cache<Question, Judged> answers =
            Caffeine.newBuilder().maximumSize(MOST).build();

    private record Question(UUID labDayId, Reference reference, Gathered gathered) {}

    private final Cache<Measured, Score> scores =
            Caffeine.newBuilder().maximumSize(MOST).build();

    private record Measured(Metric metric, MeasuredCell cell) {}

    Judged judged(UUID labDayId, Reference reference, Gathered gathered, Supplier<Judged> work) {
        return answers.get(new Question(labDayId, reference, gathered), question -> work.get());
    }

    /** @param deviates those of the cell's day */
    Score score(Metric metric, MeasuredCell cell, Deviates deviates) {
        return metric instanceof PowerDensity
                ? metric.score(cell, deviates) // drawn already
                : scores.get(
                        new Measured(metric, cell),
                        measured -> measured.metric().score(measured.cell(), deviates));
    }
}
