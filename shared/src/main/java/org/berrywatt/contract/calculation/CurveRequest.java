package org.berrywatt.contract.calculation;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A load sweep, in any order.
 *
 * @param points 5 to 400
 * @param areaCm2 lit area, in [1e-6, 10000]; needed for the efficiency
 * @param irradianceWm2 in [1e-3, 100000]; needed for the efficiency
 * @param temperatureC of the cell, in [-100, 200]; 25 when left out
 * @param cellsInSeries in [1, 1000]; 1 when left out
 */
public record CurveRequest(
        @Nullable List<@Nullable Point> points,
        @Nullable Double areaCm2,
        @Nullable Double irradianceWm2,
        @Nullable Double temperatureC,
        @Nullable Integer cellsInSeries) {

    /**
     * A row of the sweep: two of voltage, current and load; delivered current positive.
     *
     * @param voltageV in [-10000, 10000]
     * @param currentA in [-10000, 10000]
     * @param loadOhm in [0, 1e9]; taken only where voltage or current is left out
     * @param voltageUncertaintyV standard uncertainty of the voltage, in [0, 10000]; 0 when left out
     * @param currentUncertaintyA standard uncertainty of the current, in [0, 10000]; 0 when left out
     */
    public record Point(
            @Nullable Double voltageV,
            @Nullable Double currentA,
            @Nullable Double loadOhm,
            @Nullable Double voltageUncertaintyV,
            @Nullable Double currentUncertaintyA) {}
}
