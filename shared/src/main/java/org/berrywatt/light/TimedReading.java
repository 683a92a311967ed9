package org.berrywatt.light;

import java.time.Instant;
import org.berrywatt.uncertainty.Estimate;

/**
 * A light reading at a station and when it was taken.
 *
 * @param raw as displayed, in lx or W/m², in (0, ∞)
 */
public record TimedReading(Instant at, Estimate raw) {
    /**
     * Checks the reading.
     *
     * @throws IllegalArgumentException when the reading is not in (0, ∞)
     */
    public TimedReading {
        if (!(raw.value() > 0)) {
            throw new IllegalArgumentException("a light reading lies in (0, infinity), not " + raw.value());
        }
    }
}
