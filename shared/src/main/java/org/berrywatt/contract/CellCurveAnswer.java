package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;

/**
 * The load sweep that counts of a cell.
 *
 * @param points along the curve
 */
public record CellCurveAnswer(UUID cellId, String label, List<Point> points) {

    /**
     * A point as read, its current brought to the day's reference light in proportion.
     *
     * @param voltageV as read
     * @param currentDensityAm2 delivered current per area
     */
    public record Point(double voltageV, double currentDensityAm2) {}
}
