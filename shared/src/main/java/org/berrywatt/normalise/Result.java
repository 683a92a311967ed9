package org.berrywatt.normalise;

import java.util.List;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.uncertainty.Budget;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Interval;

/**
 * A cell's result at reference conditions.
 *
 * @param irradiance the light it was measured under
 * @param evaluation every figure with its budget and its trials
 * @param powerDensityWm2 maximum power per area, in W/m², with the budget that explains it
 * @param powerAtReferenceAreaW the same over the reference area
 * @param steps worked calculation, in order
 * @param notes what a reader should know
 * @param shared the parts of the power density's uncertainty that other cells share
 */
public record Result(
        EffectiveIrradiance irradiance,
        Evaluation evaluation,
        Budget powerDensityWm2,
        Estimate powerAtReferenceAreaW,
        List<Step> steps,
        List<Note> notes,
        List<SharedUncertainty> shared) {

    /** Short-circuit current per area at the reference light, in A/m². */
    public Estimate currentDensityAm2() {
        return evaluation.budget(Measurand.CURRENT_DENSITY).estimate();
    }

    /** At the reference light, in V. */
    public Estimate openCircuitVoltageV() {
        return evaluation.budget(Measurand.VOLTAGE).estimate();
    }

    /** At the reference light, in (0, 1). */
    public Estimate fillFactor() {
        return evaluation.budget(Measurand.FILL_FACTOR).estimate();
    }

    /** Maximum power over total irradiance and area under the light of the reading, as a part of 1. */
    public Estimate efficiencyAsMeasured() {
        return evaluation.budget(Measurand.EFFICIENCY).estimate();
    }

    /** The figure in every trial; see {@link Evaluation#trials}. */
    public double[] trials(Measurand measurand, Deviates deviates, String owner) {
        return evaluation.trials(measurand, deviates, owner);
    }

    /** Shortest 95 % interval of a figure; see {@link Evaluation#interval}. */
    public Interval interval(Measurand measurand, Deviates deviates, String owner) {
        return evaluation.interval(measurand, deviates, owner);
    }
}
