package org.berrywatt.contract.calculation;

import java.util.List;
import org.berrywatt.contract.CurvePoint;
import org.berrywatt.contract.Remark;
import org.jspecify.annotations.Nullable;

/**
 * The figures of a measured curve and the diode that runs through it.
 *
 * @param points voltage and current of every row, in the order given, what a row left out worked out from its load
 * @param fillFactor maximum power over the product of short-circuit current and open-circuit voltage, in (0, 1)
 * @param efficiency maximum power over irradiance times area; null without either
 * @param diode the best fit, with what the points cannot tell
 * @param uncertainties how sure each figure is, under the figure's name
 * @param notes what a reader should know
 */
public record CurveAnswer(
        List<CurvePoint> points,
        double shortCircuitCurrentA,
        double openCircuitVoltageV,
        double maximumPowerW,
        double voltageAtMaximumPowerV,
        double currentAtMaximumPowerA,
        double fillFactor,
        @Nullable Double efficiency,
        FittedDiode diode,
        Uncertainties uncertainties,
        List<Remark> notes) {

    /** How sure the figures are. */
    public record Uncertainties(
            Spread shortCircuitCurrentA,
            Spread openCircuitVoltageV,
            Spread maximumPowerW,
            Spread voltageAtMaximumPowerV,
            Spread currentAtMaximumPowerA,
            Spread fillFactor,
            @Nullable Spread efficiency) {}
}
