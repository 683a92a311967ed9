package org.berrywatt.reading;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.berrywatt.uncertainty.Estimate;

/** The last three readings, or as many as it takes to reach back ten minutes. */
record LastReadings(List<TimedValue> readings) {
    private static final int LEAST = 3;

    /** Empty when there are fewer than three, or all of them lie within ten minutes. */
    static Optional<LastReadings> of(List<TimedValue> sorted) {
        for (int from = sorted.size() - LEAST; from >= 0; from--) {
            var tail = sorted.subList(from, sorted.size());
            if (span(tail).compareTo(Settling.LEAST_SPAN) >= 0) {
                return Optional.of(new LastReadings(tail));
            }
        }
        return Optional.empty();
    }

    Estimate mean() {
        var mean = readings.stream()
                .mapToDouble(it -> it.value().value())
                .average()
                .orElseThrow();
        return new Estimate(mean, Math.hypot(spread() / 2 / Math.sqrt(3), largestUncertainty()));
    }

    double relativeSpread() {
        var mean = mean().value();
        return spread() == 0 ? 0 : spread() / Math.abs(mean);
    }

    boolean within(double part, double coverage) {
        return spread() <= Math.max(part * Math.abs(mean().value()), coverage * largestUncertainty());
    }

    private double spread() {
        var all = readings.stream().mapToDouble(it -> it.value().value()).summaryStatistics();
        return all.getMax() - all.getMin();
    }

    private double largestUncertainty() {
        return readings.stream()
                .mapToDouble(it -> it.value().standardUncertainty())
                .max()
                .orElseThrow();
    }

    private static Duration span(List<TimedValue> tail) {
        return Duration.between(tail.get(0).at(), tail.get(tail.size() - 1).at());
    }
}
