package org.berrywatt.light;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.berrywatt.uncertainty.Estimate;

/** A station's readings in order of time, with the drift between them. */
record StationCourse(Lamp lamp, List<TimedReading> sorted, Drift drift) {

    StationLight at(Instant instant) {
        var next = firstNotBefore(instant);
        if (next == 0) {
            return held(sorted.get(0), Duration.between(instant, sorted.get(0).at()), false);
        }
        var last = sorted.get(next - 1);
        if (next == sorted.size()) {
            var age = Duration.between(last.at(), instant);
            return held(last, age, age.compareTo(Duration.ofMinutes(lamp.staleAfterMinutes())) > 0);
        }
        return between(last, sorted.get(next), instant);
    }

    private int firstNotBefore(Instant instant) {
        var next = 0;
        while (next < sorted.size() && sorted.get(next).at().isBefore(instant)) {
            next++;
        }
        return next;
    }

    private StationLight held(TimedReading reading, Duration age, boolean stale) {
        var wandered = wandered(reading.raw().value(), Hours.of(age));
        return new StationLight(
                new Estimate(reading.raw().value(), Math.hypot(reading.raw().standardUncertainty(), wandered)),
                age,
                stale);
    }

    private StationLight between(TimedReading before, TimedReading after, Instant instant) {
        var sinceHours = Hours.between(before.at(), instant);
        var untilHours = Hours.between(instant, after.at());
        var part = sinceHours / (sinceHours + untilHours);
        var value = (1 - part) * before.raw().value() + part * after.raw().value();
        var read = Math.hypot(
                (1 - part) * before.raw().standardUncertainty(),
                part * after.raw().standardUncertainty());
        var wandered = wandered(value, sinceHours * untilHours / (sinceHours + untilHours));
        return new StationLight(
                new Estimate(value, Math.hypot(read, wandered)), nearest(before, after, instant), false);
    }

    private double wandered(double value, double hours) {
        return value * Math.sqrt(drift.relativeVariancePerHour() * hours);
    }

    private static Duration nearest(TimedReading before, TimedReading after, Instant instant) {
        var since = Duration.between(before.at(), instant);
        var until = Duration.between(instant, after.at());
        return since.compareTo(until) < 0 ? since : until;
    }
}
