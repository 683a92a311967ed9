package org.berrywatt.light;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How fast a station's light wanders: relative variance per hour.
 *
 * <p>The habit of the kind of lamp counts as one observation, every change from one reading to the next as another.
 */
record Drift(double relativeVariancePerHour) {
    private static final double SHORTEST_HOURS = 1 / 60.0;

    static Drift of(Lamp lamp, List<TimedReading> sorted) {
        var habit = lamp.driftPerRootHour() * lamp.driftPerRootHour();
        var observed = IntStream.range(1, sorted.size())
                .mapToDouble(i -> variancePerHour(sorted.get(i - 1), sorted.get(i)))
                .sum();
        return new Drift((habit + observed) / sorted.size());
    }

    private static double variancePerHour(TimedReading earlier, TimedReading later) {
        var change = Math.log(later.raw().value() / earlier.raw().value());
        return change * change / Math.max(SHORTEST_HOURS, Hours.between(earlier.at(), later.at()));
    }
}
