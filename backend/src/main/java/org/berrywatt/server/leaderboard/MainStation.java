package org.berrywatt.server.leaderboard;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import java.util.Collection;
import java.util.Comparator;
import java.util.Map;

/** The station at which most results of a day were measured; of equally busy ones the first by name. */
final class MainStation {

    private MainStation() {}

    static String of(Collection<Judged> cells) {
        return cells.stream()
                .filter(Judged.Counts.class::isInstance)
                .map(cell -> ((Judged.Counts) cell).station())
                .collect(groupingBy(station -> station, counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.<String, Long>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .map(Map.Entry::getKey)
                .orElse("");
    }
}
