package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.calculation.NormalisationRequest;
import org.jspecify.annotations.Nullable;

/**
 * A cell's result with its worked calculation.
 *
 * @param metric key of what the day ranks by
 * @param figure what this cell is ranked by; null while it has none
 * @param missing what is still needed before this cell counts, most urgent first; of a cell with a result, before the day's
 *     ranking takes it
 * @param notes what a reader of the figure should know (no sweep, scaled far, dark current subtracted ...)
 * @param numbers what the result rests on, as the calculator takes it; null without a result
 */
public record CellResultAnswer(
        UUID cellId,
        String label,
        String standing,
        @Nullable Remark remark,
        String metric,
        @Nullable RankedFigure figure,
        @Nullable Figure effectiveIrradianceWm2,
        @Nullable Figure currentDensityAm2,
        @Nullable Figure openCircuitVoltageV,
        @Nullable Figure fillFactor,
        @Nullable Figure powerDensityWm2,
        @Nullable Figure powerAtReferenceAreaW,
        List<StepAnswer> steps,
        List<BudgetLine> budget,
        List<Remark> missing,
        List<Remark> notes,
        @Nullable NormalisationRequest numbers) {}
