package org.berrywatt.reading;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * Whether a filled cell still changes while solvent leaves it, over tens of minutes.
 *
 * <p>With four readings or more x(t) = x∞ + (x0 - x∞) exp(-t/τ) is fitted, and the cell has settled when what remains is within
 * 5 % of x∞ or within twice the uncertainty of the last reading. Where the fit does not tell, or for three readings, it has
 * settled when the last three, over ten minutes or more, lie within those limits of each other.
 *
 * @param state what the readings say
 * @param method how that was found
 * @param settledValue where the figure is heading, or the mean of the last three; null while it cannot be told
 * @param remaining relative change still to come, or spread of the last three, in [0, ∞)
 * @param comeBackAt when the next reading is worth taking; null when the cell has settled
 */
public record Settling(
        State state,
        Method method,
        @Nullable Estimate settledValue,
        double remaining,
        @Nullable Instant comeBackAt) {

    /** Part of the settled value that may remain (common practice, no source). */
    static final double SETTLED_WITHIN = 0.05;

    private static final int LEAST_FOR_A_FIT = 4;
    static final double COVERAGE = 2;
    static final Duration LEAST_SPAN = Duration.ofMinutes(10);

    /** What can be said. */
    public enum State {
        /** It no longer changes by more than 5 % or the meter can tell. */
        SETTLED("settled"),
        /** It still changes. */
        SETTLING("settling"),
        /** Too few readings, or too close in time. */
        UNKNOWN("unknown");

        private final String key;

        State(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    /** How it was found. */
    public enum Method {
        /** An exponential through four readings or more. */
        FIT,
        /** The spread of the last three readings. */
        LAST_THREE,
        /** Nothing could be done. */
        NONE
    }

    /**
     * Judges a figure of one cell.
     *
     * @param readings under alike light, in any order
     * @throws IllegalArgumentException when there is no reading
     */
    public static Settling of(List<TimedValue> readings) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("settling needs a reading");
        }
        var sorted =
                readings.stream().sorted(Comparator.comparing(TimedValue::at)).toList();
        return sorted.size() < LEAST_FOR_A_FIT
                ? byLastThree(sorted)
                : SettlingFit.of(sorted).map(fit -> byFit(sorted, fit)).orElseGet(() -> byLastThree(sorted));
    }

    /**
     * The fitted course, for drawing.
     *
     * @param readings under alike light, in any order
     * @param at instants to draw it at
     * @return one value for each instant; none for fewer than four readings, or where they do not tell where they are heading
     */
    public static List<TimedValue> course(List<TimedValue> readings, List<Instant> at) {
        var sorted =
                readings.stream().sorted(Comparator.comparing(TimedValue::at)).toList();
        return sorted.size() < LEAST_FOR_A_FIT
                ? List.of()
                : SettlingFit.of(sorted).stream()
                        .flatMap(fit -> at.stream().map(it -> new TimedValue(it, Estimate.exact(fit.valueAt(it)))))
                        .toList();
    }

    private static Settling byFit(List<TimedValue> sorted, SettlingFit fit) {
        var last = sorted.get(sorted.size() - 1);
        var limit = Math.max(
                SETTLED_WITHIN * Math.abs(fit.settled().value()),
                COVERAGE * last.value().standardUncertainty());
        var remaining = Math.abs(fit.remainingAt(last.at()));
        var relative = remaining / Math.abs(fit.settled().value());
        return remaining <= limit
                ? new Settling(State.SETTLED, Method.FIT, fit.settled(), relative, null)
                : new Settling(
                        State.SETTLING,
                        Method.FIT,
                        fit.settled(),
                        relative,
                        last.at().plus(fit.timeFrom(remaining, limit)));
    }

    private static Settling byLastThree(List<TimedValue> sorted) {
        var last = sorted.get(sorted.size() - 1);
        var next = last.at().plus(LEAST_SPAN);
        var three = LastReadings.of(sorted);
        if (three.isEmpty()) {
            return new Settling(State.UNKNOWN, Method.NONE, null, 0, next);
        }
        return three.get().within(SETTLED_WITHIN, COVERAGE)
                ? new Settling(
                        State.SETTLED,
                        Method.LAST_THREE,
                        three.get().mean(),
                        three.get().relativeSpread(),
                        null)
                : new Settling(
                        State.SETTLING, Method.LAST_THREE, null, three.get().relativeSpread(), next);
    }
}
