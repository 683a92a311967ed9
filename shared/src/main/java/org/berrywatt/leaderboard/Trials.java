package org.berrywatt.leaderboard;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.berrywatt.uncertainty.Sample;
import org.jspecify.annotations.Nullable;

/**
 * A cell's result in every Monte Carlo trial, in the order of the trials, which all cells of a day share: trial k of one cell and
 * trial k of another met the same light, meter and lamp.
 */
public final class Trials {
    private final double[] values;

    private Trials(double[] values) {
        this.values = values;
    }

    /**
     * Takes the array as it is; the caller does not change it any more.
     *
     * @param values each in [0, ∞)
     * @throws IllegalArgumentException when one is not
     */
    public static Trials of(double[] values) {
        for (double value : values) {
            if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("a trial of a result lies in [0, infinity), not " + value);
            }
        }
        return new Trials(values);
    }

    /** A result that is the same in all trials. */
    public static Trials certain(double value, int count) {
        var values = new double[count];
        Arrays.fill(values, value);
        return of(values);
    }

    public int count() {
        return values.length;
    }

    /** These over others, trial by trial; none of the others is 0. */
    Trials over(Trials others) {
        return of(IntStream.range(0, values.length)
                .mapToDouble(trial -> values[trial] / others.values[trial])
                .toArray());
    }

    boolean reachZero() {
        return Arrays.stream(values).anyMatch(value -> !(value > 0));
    }

    Sample sample() {
        return Sample.of(values);
    }

    double in(int trial) {
        return values[trial];
    }

    double[] values() {
        return values;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return this == other || (other instanceof Trials trials && Arrays.equals(values, trials.values));
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }
}
