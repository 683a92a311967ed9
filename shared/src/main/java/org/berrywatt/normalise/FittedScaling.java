package org.berrywatt.normalise;

import java.util.function.ToDoubleBiFunction;
import org.berrywatt.uncertainty.Input;

/**
 * Scaling by the diode that fits the sweep: only its photocurrent follows the light, and the curve is solved anew. What was read
 * locally at the axes and at the peak is kept and multiplied by what the diode says of the change, so that a diode that misses the
 * curve a little does little harm. How far other likely diodes answer differently is the uncertainty of the change.
 */
final class FittedScaling {
    private static final int TABLE_POINTS = 9;

    private FittedScaling() {}

    static Scaling of(LikelyDiodes diodes, Term measuredFillFactor, ClipTerms clips, Ratio ratio, Inputs inputs) {
        var current = factor(diodes, LitDiode::logCurrent, ratio, "input.diodeCurrent", inputs);
        var voltage = factor(diodes, LitDiode::logVoltage, ratio, "input.diodeVoltage", inputs);
        var power = factor(diodes, LitDiode::logPower, ratio, "input.diodePower", inputs);
        return new Scaling(
                current,
                clips.voltageV().times(voltage),
                measuredFillFactor,
                measuredFillFactor.times(power).over(current.times(voltage)));
    }

    private static Term factor(
            LikelyDiodes diodes,
            ToDoubleBiFunction<LitDiode, Double> logFactor,
            Ratio ratio,
            String name,
            Inputs inputs) {
        var best = ratio.span().tabulate(TABLE_POINTS, r -> diodes.best(diode -> logFactor.applyAsDouble(diode, r)));
        var spread = ratio.span()
                .tabulate(
                        TABLE_POINTS,
                        r -> Math.signum(Math.log(r)) * diodes.spread(diode -> logFactor.applyAsDouble(diode, r)));
        var deviation = inputs.add(Input.normal(name, 0, "1", 1));
        return values -> {
            var logRatio = ratio.logarithm().in(values);
            return Math.exp(best.at(logRatio) + deviation.in(values) * spread.at(logRatio));
        };
    }
}
