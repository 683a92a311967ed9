package org.berrywatt.leaderboard;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.berrywatt.uncertainty.Estimate;

/**
 * A power density with its uncertainty taken apart: what is its own, and what it shares with others by cause.
 *
 * @param valueWm2 in [0, ∞)
 * @param ownVariance in [0, ∞)
 * @param shared change for one standard uncertainty of each cause, in order of the causes' names
 */
record Combination(double valueWm2, double ownVariance, Map<String, Double> shared) {
    static final Combination ZERO = new Combination(0, 0, Collections.emptyMap());

    static Combination of(CellEntry.Counts cell) {
        var shared = new TreeMap<String, Double>();
        cell.shared().forEach(part -> shared.merge(part.source(), part.powerDensityWm2(), Double::sum));
        var all = Math.pow(cell.powerDensityWm2().standardUncertainty(), 2);
        return new Combination(cell.powerDensityWm2().value(), Math.max(0, all - squares(shared)), shared);
    }

    Combination times(double factor) {
        var parts = new TreeMap<String, Double>();
        shared.forEach((source, change) -> parts.put(source, change * factor));
        return new Combination(valueWm2 * factor, ownVariance * factor * factor, parts);
    }

    Combination plus(Combination other) {
        var parts = new TreeMap<>(shared);
        other.shared.forEach((source, change) -> parts.merge(source, change, Double::sum));
        return new Combination(valueWm2 + other.valueWm2, ownVariance + other.ownVariance, parts);
    }

    Estimate estimate() {
        return new Estimate(valueWm2, Math.sqrt(ownVariance + squares(shared)));
    }

    /**
     * Whether this is clearly more than the other: the 95 % interval of the logarithm of their ratio lies above 0. Causes that
     * both share cancel in the ratio. Anything above 0 is clearly more than 0.
     */
    boolean isClearlyAbove(Combination other) {
        if (!(valueWm2 > other.valueWm2)) {
            return false;
        }
        return other.valueWm2 == 0
                || Math.log(valueWm2 / other.valueWm2) > Estimate.COVERAGE_95 * ratioUncertainty(other);
    }

    /** Standard uncertainty of the logarithm of the ratio. */
    private double ratioUncertainty(Combination other) {
        var here = times(1 / valueWm2);
        var there = other.times(-1 / other.valueWm2);
        return here.plus(there).estimate().standardUncertainty();
    }

    private static double squares(Map<String, Double> shared) {
        return shared.values().stream().mapToDouble(change -> change * change).sum();
    }
}
