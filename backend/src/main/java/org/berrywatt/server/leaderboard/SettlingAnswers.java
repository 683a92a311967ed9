package org.berrywatt.server.leaderboard;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.berrywatt.contract.SettlingAnswer;
import org.berrywatt.contract.SettlingAnswer.Moment;
import org.berrywatt.reading.Settling;
import org.berrywatt.reading.TimedValue;

/** A settling cell as it travels. */
final class SettlingAnswers {

    private static final int STEPS = 40;

    private SettlingAnswers() {}

    /** @param series current per light, oldest first */
    static SettlingAnswer of(List<TimedValue> series) {
        if (series.isEmpty()) {
            return new SettlingAnswer(Settling.State.UNKNOWN.key(), null, List.of(), List.of());
        }
        Settling settling = Settling.of(series);
        Instant from = series.get(0).at();
        Instant last = series.get(series.size() - 1).at();
        Instant to = Objects.requireNonNullElse(settling.comeBackAt(), last);
        return new SettlingAnswer(
                settling.state().key(),
                settling.comeBackAt(),
                moments(series),
                moments(Settling.course(series, instants(from, to))));
    }

    private static List<Instant> instants(Instant from, Instant to) {
        Duration whole = Duration.between(from, to);
        return IntStream.rangeClosed(0, STEPS)
                .mapToObj(at -> from.plus(whole.multipliedBy(at).dividedBy(STEPS)))
                .toList();
    }

    private static List<Moment> moments(List<TimedValue> values) {
        return values.stream()
                .map(it -> new Moment(it.at(), it.value().value()))
                .toList();
    }
}
