package org.berrywatt.server.desk;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Everything about a day that waits for the teacher: a pure function of what is known. */
final class Attention {

    private static final List<Function<DeskRecord, Stream<Matter>>> WATCHES = List.of(
            SafetyMatters::of,
            IncidentMatters::of,
            LessonMatters::of,
            StationMatters::of,
            ControlMatters::of,
            ReadingMatters::of,
            CellMatters::of,
            TeamMatters::of);

    private Attention() {}

    /** Once results are final nothing can be done about them, so that only the end of the day's keeping is left. */
    static List<Matter> of(DeskRecord record) {
        return Stream.concat(
                        record.day().resultsFinal() ? Stream.empty() : WATCHES.stream(),
                        Stream.of(RetentionMatters::of))
                .flatMap(watch -> watch.apply(record))
                .sorted(Matter.ORDER)
                .toList();
    }
}
