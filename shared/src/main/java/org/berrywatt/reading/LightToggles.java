package org.berrywatt.reading;

import java.util.ArrayList;
import java.util.List;
import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.RepeatedReadings;

/**
 * A shutter opened and closed three times or more: only what comes and goes with the light, again and again, is the light's.
 *
 * <p>Each reading in the light is held against the mean of the covered ones before and after it, so that a steady drift
 * cancels. The response is the mean of these changes; its uncertainty is the larger of their scatter, s/√n, and the meter's.
 *
 * @param response change from covered to lit, in the unit of the readings
 * @param repeatable all changes have one sign, and scatter by no more than half of their mean
 * @param deciders times opened, response in standard uncertainties, scatter over mean, each beside its limit
 */
public record LightToggles(Estimate response, boolean repeatable, List<Decider> deciders) {
    /** Times that the shutter must have opened. */
    public static final int LEAST = 3;

    /** Scatter of the changes over their mean (common practice, no source). */
    private static final double MOST_SCATTER = 0.5;

    /**
     * One reading of a toggle series.
     *
     * @param lit shutter open
     * @param value voltage in V or current in A, always the same of the two
     */
    public record Toggle(boolean lit, Estimate value) {}

    /**
     * The series.
     *
     * @param series in the order read; neighbours of one kind are taken as one state of the shutter, the last of them counts
     * @throws IllegalArgumentException when the shutter opened fewer than three times between or after covered readings
     */
    public static LightToggles of(List<Toggle> series, DarkThresholds limits) {
        var changes = changes(states(series));
        if (changes.size() < LEAST) {
            throw new IllegalArgumentException("light toggles need the shutter opened [" + LEAST + ", ∞) times, not "
                    + changes.size() + "; cover the cell, open, and repeat");
        }
        var values = changes.stream().mapToDouble(Estimate::value).toArray();
        var repeats = RepeatedReadings.of(values);
        var response = new Estimate(repeats.mean(), Math.max(repeats.standardUncertainty(), meter(changes)));
        return of(changes, response, repeats.standardDeviation(), limits);
    }

    /** Whether the response is repeatable and beyond its limit, 3 u as a rule, of either sign. */
    public boolean held() {
        return repeatable
                && Math.abs(deciders.get(1).value()) >= deciders.get(1).limit();
    }

    private static LightToggles of(List<Estimate> changes, Estimate response, double scatter, DarkThresholds limits) {
        var multiple = response.value() == 0 ? 0 : response.value() / response.standardUncertainty();
        var relative = response.value() == 0 ? Double.MAX_VALUE : scatter / Math.abs(response.value());
        var oneSign = changes.stream().allMatch(change -> change.value() * response.value() > 0);
        return new LightToggles(
                response,
                oneSign && relative <= MOST_SCATTER,
                List.of(
                        new Decider("toggles", changes.size(), LEAST, "1"),
                        new Decider("toggleResponse", multiple, limits.responseFactor(), "1"),
                        new Decider("toggleScatter", relative, MOST_SCATTER, "1")));
    }

    private static List<Toggle> states(List<Toggle> series) {
        var states = new ArrayList<Toggle>();
        for (var toggle : series) {
            if (!states.isEmpty() && states.get(states.size() - 1).lit() == toggle.lit()) {
                states.remove(states.size() - 1);
            }
            states.add(toggle);
        }
        return states;
    }

    private static List<Estimate> changes(List<Toggle> states) {
        var changes = new ArrayList<Estimate>();
        for (int i = 0; i < states.size(); i++) {
            if (states.get(i).lit() && states.size() > 1) {
                changes.add(states.get(i).value().minus(covered(states, i)));
            }
        }
        return changes;
    }

    private static Estimate covered(List<Toggle> states, int lit) {
        if (lit == 0 || lit == states.size() - 1) {
            return states.get(lit == 0 ? 1 : lit - 1).value();
        }
        var before = states.get(lit - 1).value();
        var after = states.get(lit + 1).value();
        return new Estimate(
                (before.value() + after.value()) / 2,
                Math.hypot(before.standardUncertainty(), after.standardUncertainty()) / 2);
    }

    private static double meter(List<Estimate> changes) {
        return changes.stream().mapToDouble(Estimate::standardUncertainty).max().orElseThrow()
                / Math.sqrt(changes.size());
    }
}
