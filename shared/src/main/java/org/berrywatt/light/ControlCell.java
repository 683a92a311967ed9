package org.berrywatt.light;

import java.util.List;
import org.berrywatt.uncertainty.Estimate;

/**
 * One cell of the class that is read again and again: it anchors stations, hours and school years to each other. What a
 * light meter gets wrong about a lamp's colour, the control cell of the same dye gets right.
 */
public final class ControlCell {
    private static final double LEAST_UNCERTAINTY = 1e-6;

    private ControlCell() {}

    /**
     * A cell's figure over the control cell's, read at the same place and hour: the light cancels.
     *
     * @param cell value finite
     * @param control in the same unit, value in (0, ∞)
     * @throws IllegalArgumentException when the control cell's figure is not in (0, ∞)
     */
    public static Estimate ratio(Estimate cell, Estimate control) {
        if (!(control.value() > 0)) {
            throw new IllegalArgumentException(
                    "a ratio needs a control cell that gave something, in (0, ∞), not " + control.value());
        }
        var ratio = cell.value() / control.value();
        return new Estimate(
                ratio, Math.hypot(cell.standardUncertainty() / control.value(), ratio * control.relativeUncertainty()));
    }

    /**
     * How a station's light drifted, as a part per hour: the slope of the control cell's ln I over time.
     *
     * @param readings at one station, at two or more instants, in any order
     * @throws IllegalArgumentException when the instants are fewer
     */
    public static Estimate driftPerHour(List<ControlReading> readings) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("drift needs the control cell read at two instants or more");
        }
        var start = readings.get(0).at();
        var line = WeightedLine.through(
                readings.stream()
                        .mapToDouble(it -> Hours.between(start, it.at()))
                        .toArray(),
                readings.stream()
                        .mapToDouble(it -> Math.log(it.currentA().value()))
                        .toArray(),
                readings.stream()
                        .mapToDouble(
                                it -> Math.max(LEAST_UNCERTAINTY, it.currentA().relativeUncertainty()))
                        .toArray());
        return new Estimate(line.slope(), line.slopeUncertainty());
    }

    /**
     * Holds the light meter against the control cell: from one place or hour to another both should change alike.
     *
     * @param one light by the meter and the control cell's current
     * @param other the same elsewhere or later; uncertainties only of what the two do not share
     */
    public static Agreement agreement(LitCurrent one, LitCurrent other) {
        var light = ratio(other.lightWm2(), one.lightWm2());
        var current = ratio(other.currentA(), one.currentA());
        return Agreement.of(light, current);
    }

    /**
     * What came of it.
     *
     * @param lightRatio the change by the meter
     * @param currentRatio the change by the control cell
     * @param score |ln currentRatio/lightRatio| over its expanded uncertainty (k = 2), the E_n score of ISO/IEC 17043, in [0, ∞]
     */
    public record Agreement(Estimate lightRatio, Estimate currentRatio, double score) {

        private static Agreement of(Estimate light, Estimate current) {
            var apart = Math.abs(Math.log(current.value() / light.value()));
            var expanded = 2 * Math.hypot(light.relativeUncertainty(), current.relativeUncertainty());
            return new Agreement(light, current, apart == 0 ? 0 : apart / expanded);
        }

        /** Whether the score is within 1. */
        public boolean agrees() {
            return score <= 1;
        }
    }
}
