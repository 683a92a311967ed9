package org.berrywatt.normalise;

import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * Everything recorded about one cell that its result rests on.
 *
 * @param underLight readings or sweep under the light
 * @param darkCurrentA current of the covered cell at short circuit, delivered current positive; null when not read
 * @param areaM2 lit area of the film, in (0, ∞)
 * @param meter names the multimeter; cells read with one meter share the error of its calibration
 * @param temperature of the cell; null when not measured, then it is taken as 25 °C give or take 10 K
 */
public record CellMeasurement(
        UnderLight underLight,
        @Nullable Shown darkCurrentA,
        Estimate areaM2,
        LightAtCell light,
        String meter,
        @Nullable CellTemperature temperature) {}
