package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a cell's current has changed since it was filled, at the station where it was read last.
 *
 * @param state {@code "settled"}, {@code "settling"} or {@code "unknown"}
 * @param comeBackAt when the next reading is worth taking; null when it has settled
 * @param readings oldest first
 * @param course the fitted course through four readings or more, to the next reading; empty where it cannot be told
 */
public record SettlingAnswer(String state, @Nullable Instant comeBackAt, List<Moment> readings, List<Moment> course) {

    /**
     * Current per light at an instant.
     *
     * @param currentPerLight in A per W/m2
     */
    public record Moment(Instant at, double currentPerLight) {}
}
