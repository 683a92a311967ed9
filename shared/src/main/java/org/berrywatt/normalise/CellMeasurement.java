package org.berrywatt.normalise;

import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * Everything recorded about one cell that its result rests on.
 *
 * @param underLight readings or sweep under the light
 * @param darkCurrentA current of the covered cell at short circuit, delivered current positive; null when not read
 * @param areaM2 lit area of the film, in (0, ∞)
 */
public record CellMeasurement(
        UnderLight underLight, @Nullable Shown darkCurrentA, Estimate areaM2, LightAtCell light) {}
