package org.berrywatt.server.desk;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.leaderboard.RatioToControl;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.reading.RecordedReading;

/** A day that ranks by the ratio to a control cell while none is chosen: nothing that is read can be ranked meanwhile. */
final class ControlMatters {

    private ControlMatters() {}

    static Stream<Matter> of(DeskRecord record) {
        return record.control().isEmpty() && isRankedByRatio(record.day())
                ? firstReading(record).map(since -> matter(record.day(), since)).stream()
                : Stream.empty();
    }

    private static boolean isRankedByRatio(LabDay day) {
        return Rule.of(day.rule()).metric() instanceof RatioToControl;
    }

    private static Optional<Instant> firstReading(DeskRecord record) {
        return record.readings().values().stream()
                .flatMap(List::stream)
                .map(RecordedReading::readAt)
                .min(Instant::compareTo);
    }

    private static Matter matter(LabDay day, Instant since) {
        return new Matter(Kind.NO_CONTROL, day.id(), null, null, null, since, Map.of(), null);
    }
}
