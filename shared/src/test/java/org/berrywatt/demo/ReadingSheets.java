package org.berrywatt.demo;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.demo.Recorded.Point;

/** The files about what the meters showed. */
record ReadingSheets(List<Recorded> recorded) {

    static ReadingSheets of(List<Visit> visits) {
        return new ReadingSheets(visits.stream()
                .flatMap(visit -> new Bench(visit).readings().stream())
                .sorted(Comparator.comparing(Recorded::at))
                .toList());
    }

    Sheet readings() {
        List<String> columns = List.of(
                "id", "cell_id", "station_id", "kind", "voltage", "current", "unusual_confirmed", "replaces", "at");
        return new Sheet(
                "readings.csv",
                columns,
                recorded.stream().map(ReadingSheets::row).toList());
    }

    private static List<Object> row(Recorded reading) {
        return List.of(
                reading.id(),
                reading.cellId(),
                reading.stationId(),
                reading.kind(),
                reading.voltage(),
                reading.current(),
                reading.unusualConfirmed(),
                reading.replaces(),
                When.of(reading.at()));
    }

    Sheet sweepPoints() {
        return new Sheet(
                "sweep-points.csv",
                List.of("reading_id", "row", "load", "voltage", "current"),
                recorded.stream().flatMap(ReadingSheets::points).toList());
    }

    private static Stream<List<Object>> points(Recorded sweep) {
        return IntStream.range(0, sweep.points().size()).mapToObj(i -> point(sweep, i));
    }

    private static List<Object> point(Recorded sweep, int index) {
        Point point = sweep.points().get(index);
        return List.of(sweep.id(), index + 1, point.load(), point.voltage(), "");
    }
}
