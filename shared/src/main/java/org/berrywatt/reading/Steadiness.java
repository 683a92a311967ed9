package org.berrywatt.reading;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether the display stands still under the light: over the last 30 s the reading changed by no more than 2 % or two digits
 * (common practice, no source).
 *
 * @param change from the reading 30 s or more before to the last one, in the unit of the readings
 * @param limit what would still be steady
 */
public record Steadiness(double change, double limit) {
    private static final Duration OVER = Duration.ofSeconds(30);
    private static final double PART = 0.02;
    private static final double DIGITS = 2;

    /**
     * Judges a series under one light.
     *
     * @param readings in any order
     * @param resolution step of the last digit, in [0, ∞)
     * @return empty when no two readings lie 30 s apart
     */
    public static Optional<Steadiness> of(List<TimedValue> readings, double resolution) {
        var sorted =
                readings.stream().sorted(Comparator.comparing(TimedValue::at)).toList();
        return sorted.isEmpty() ? Optional.empty() : before(sorted).map(it -> between(it, last(sorted), resolution));
    }

    public boolean steady() {
        return Math.abs(change) <= limit;
    }

    private static Optional<TimedValue> before(List<TimedValue> sorted) {
        var latest = last(sorted).at().minus(OVER);
        return sorted.stream().filter(it -> !it.at().isAfter(latest)).reduce((earlier, later) -> later);
    }

    private static Steadiness between(TimedValue before, TimedValue last, double resolution) {
        var limit = Math.max(PART * Math.abs(last.value().value()), DIGITS * resolution);
        return new Steadiness(last.value().value() - before.value().value(), limit);
    }

    private static TimedValue last(List<TimedValue> sorted) {
        return sorted.get(sorted.size() - 1);
    }
}
