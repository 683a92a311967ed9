package org.berrywatt.contract.calculation;

import java.util.List;
import org.berrywatt.contract.BudgetLine;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.Remark;
import org.berrywatt.contract.StepAnswer;

/**
 * A cell's result at reference conditions; intervals are the shortest that hold 95 % of the trials (JCGM 101:2008, 7.7.4).
 *
 * @param effectiveIrradianceWm2 sunlight under which this dye would deliver the same current
 * @param irradianceWm2 total irradiance at the cell
 * @param currentDensityAm2 at short circuit and reference light
 * @param openCircuitVoltageV at reference light
 * @param fillFactor at reference light
 * @param powerDensityWm2 maximum power per area at reference light
 * @param powerAtReferenceAreaW the same over the reference area
 * @param efficiencyAsMeasured maximum power over total irradiance and area, under the light of the reading, as a part of 1
 * @param steps worked calculation, in order
 * @param budget what each input adds to the uncertainty of the power density
 * @param notes what a reader of the figures should know, weightiest first
 */
public record NormalisationAnswer(
        Figure effectiveIrradianceWm2,
        Figure irradianceWm2,
        Figure currentDensityAm2,
        Figure openCircuitVoltageV,
        Figure fillFactor,
        Figure powerDensityWm2,
        Figure powerAtReferenceAreaW,
        Figure efficiencyAsMeasured,
        List<StepAnswer> steps,
        List<BudgetLine> budget,
        List<Remark> notes) {}
