package org.berrywatt.normalise;

import java.util.Comparator;
import org.berrywatt.curve.SweepPoint;

/** The most of its voltage that a cell may lose in its series resistance at short circuit. */
final class SeriesShare {
    private static final double THIRD = 1 / 3.0;

    private SeriesShare() {}

    /**
     * From the fall of voltage with current over the third of the curve next to open circuit, which is steeper than the resistance
     * alone; in [0, 1], 1 where there are no points.
     *
     * @param voltageV open-circuit voltage under the light of the reading times {@code ratio}
     */
    static double of(LoadSweep sweep, double voltageV, double ratio) {
        var shortCircuitA = sweep.figures().shortCircuitCurrentA().value();
        return sweep.points().stream()
                .filter(SweepPoint::deliversPower)
                .min(Comparator.comparingDouble(point -> Math.abs(point.currentA() - THIRD * shortCircuitA)))
                .map(point -> (sweep.figures().openCircuitVoltageV().value() - point.voltageV()) / point.currentA())
                .map(ohm -> Math.min(1, Math.max(0, ohm * ratio * shortCircuitA / voltageV)))
                .orElse(1.0);
    }
}
