package org.berrywatt.curve;

import java.util.Comparator;
import java.util.List;

/**
 * An upper bound of the shunt conductance: the mean fall of current with voltage over the first third of the curve. The curve
 * bends downwards, so that it falls less steeply at 0 V.
 */
final class ShuntBound {
    private static final double THIRD = 1 / 3.0;

    private ShuntBound() {}

    static double conductanceS(List<SweepPoint> along, double highestShortCircuitA, double openCircuitV) {
        return along.stream()
                .filter(SweepPoint::deliversPower)
                .min(Comparator.comparingDouble(point -> Math.abs(point.voltageV() - THIRD * openCircuitV)))
                .map(point -> (highestShortCircuitA - point.currentA()) / point.voltageV())
                .map(fall -> Math.max(0, fall))
                .orElse(0.0);
    }
}
