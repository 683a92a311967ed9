package org.berrywatt.light;

import java.time.Instant;
import org.berrywatt.uncertainty.Estimate;

/**
 * The control cell's short-circuit current at a station.
 *
 * @param currentA value in (0, ∞)
 */
public record ControlReading(Instant at, Estimate currentA) {
    /**
     * Checks the reading.
     *
     * @throws IllegalArgumentException when the current is not in (0, ∞)
     */
    public ControlReading {
        if (!(currentA.value() > 0)) {
            throw new IllegalArgumentException(
                    "a lit control cell gives a current in (0, ∞) A, not " + currentA.value());
        }
    }
}
