package org.berrywatt.leaderboard;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import java.util.Collection;
import java.util.Comparator;
import java.util.Map;

/** The station at which most results were measured. */
public final class BusiestStation {

    private BusiestStation() {}

    /**
     * Of equally busy ones the first by name.
     *
     * @param stations one for each result, in any order
     * @return empty when there is no result
     */
    public static String of(Collection<String> stations) {
        return stations.stream().collect(groupingBy(station -> station, counting())).entrySet().stream()
                .max(Map.Entry.<String, Long>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .map(Map.Entry::getKey)
                .orElse("");
    }
}
