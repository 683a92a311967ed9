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
            ReadingMatters::of,
            CellMatters::of,
            TeamMatters::of);

    private Attention() {}

    /** Nothing once results are final, since nothing can be done about it then. */
    static List<Matter> of(DeskRecord record) {
        return record.day().resultsFinal()
                ? List.of()
                : WATCHES.stream()
                        .flatMap(watch -> watch.apply(record))
                        .sorted(Matter.ORDER)
                        .toList();
    }
}
