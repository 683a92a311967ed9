package org.berrywatt.light;

import java.time.Instant;
import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Shape;

/**
 * A light reading at a station and when it was taken.
 *
 * @param raw as displayed, in lx or W/m², in (0, ∞)
 */
public record TimedReading(Instant at, Estimate raw) {
    /** What a display showed: the last digit is rounded (JCGM 100:2008, F.2.2.1). */
    public static TimedReading shown(Instant at, double value, double resolution) {
        return new TimedReading(at, new Estimate(value, Shape.RECTANGULAR.standardUncertainty(resolution / 2)));
    }

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
