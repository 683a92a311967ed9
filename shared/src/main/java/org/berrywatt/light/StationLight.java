package org.berrywatt.light;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import org.berrywatt.uncertainty.Estimate;

/**
 * What a station's instrument would have shown at an instant.
 *
 * <p>Between two readings the light runs linearly in time; before the first and past the last it is held. What happened
 * between is a random walk with the station's own {@link Drift}: the relative variance grows with the age of a held reading,
 * and between two readings t1 and t2 away with t1 t2/(t1 + t2).
 *
 * @param raw in the unit of the readings
 * @param age time to the nearest reading
 * @param stale whether the last reading is too old for this kind of lamp
 */
public record StationLight(Estimate raw, Duration age, boolean stale) {

    /**
     * The light at an instant.
     *
     * @param readings in any order, at least one
     * @throws IllegalArgumentException without a reading
     */
    public static StationLight at(Lamp lamp, List<TimedReading> readings, Instant instant) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("a station's light needs at least one reading");
        }
        var sorted = readings.stream()
                .sorted(Comparator.comparing(TimedReading::at)
                        .thenComparing(reading -> reading.raw().value()))
                .toList();
        return new StationCourse(lamp, sorted, Drift.of(lamp, sorted)).at(instant);
    }
}
