package org.berrywatt.normalise;

import java.util.List;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.uncertainty.Budget;
import org.berrywatt.uncertainty.Estimate;

/**
 * A cell's result at reference conditions.
 *
 * @param irradiance the light it was measured under
 * @param currentDensityAm2 photocurrent per area at short circuit, in A/m²
 * @param openCircuitVoltageV at the reference irradiance
 * @param fillFactor at the reference irradiance, in (0, 1)
 * @param powerDensityWm2 maximum power per area, in W/m², with the budget that explains it
 * @param powerAtReferenceAreaW the same over the reference area
 * @param steps worked calculation, in order
 * @param notes what a reader should know
 * @param shared the parts of the power density's uncertainty that other cells share
 */
public record Result(
        EffectiveIrradiance irradiance,
        Estimate currentDensityAm2,
        Estimate openCircuitVoltageV,
        Estimate fillFactor,
        Budget powerDensityWm2,
        Estimate powerAtReferenceAreaW,
        List<Step> steps,
        List<Note> notes,
        List<SharedUncertainty> shared) {}
