package org.berrywatt.light;

import java.time.Duration;
import java.time.Instant;

/** Spans of time as a number of hours. */
final class Hours {
    private static final double NANOSECONDS = 3.6e12;

    private Hours() {}

    static double between(Instant from, Instant to) {
        return of(Duration.between(from, to));
    }

    static double of(Duration span) {
        return span.toNanos() / NANOSECONDS;
    }
}
