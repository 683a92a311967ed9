package org.berrywatt.normalise;

import java.util.function.ToDoubleBiFunction;
import org.berrywatt.uncertainty.Input;

/**
 * Scaling by the diode that fits the sweep: only its photocurrent follows the light, and the curve is solved anew. What was read
 * locally at the axes and at the peak is kept and multiplied by what the diode says of the change, so that a diode that misses the
 * curve a little does little harm. How far other likely diodes answer differently is the uncertainty of the change.
 *
 * <p>A sweep under one light says little of the shunt under a much weaker one or of the series resistance under a much stronger
 * one: beyond a factor of {@value Ratio#TRUSTED} the laws of a cell whose diode is not known take over for the rest of the way.
 */
final class FittedScaling {
    private static final int TABLE_POINTS = 9;

    private final LikelyDiodes diodes;
    private final Ratio ratio;
    private final Inputs inputs;

    private FittedScaling(LikelyDiodes diodes, Ratio ratio, Inputs inputs) {
        this.diodes = diodes;
        this.ratio = ratio;
        this.inputs = inputs;
    }

    static Scaling of(
            LoadSweep sweep,
            LikelyDiodes diodes,
            Term measuredFillFactor,
            ClipTerms clips,
            Ratio ratio,
            Inputs inputs) {
        var trusted = ratio.trusted();
        var near = new FittedScaling(diodes, trusted, inputs).scaling(measuredFillFactor, clips);
        if (ratio.isTrusted()) {
            return near;
        }
        var edge = Math.exp(trusted.span().middle());
        var nearV =
                sweep.figures().openCircuitVoltageV().value() * Math.exp(diodes.best(diode -> diode.logVoltage(edge)));
        return BoundedScaling.onwards(near, sweep, nearV, edge, ratio.beyond(), inputs);
    }

    private Scaling scaling(Term measuredFillFactor, ClipTerms clips) {
        var current = factor(LitDiode::logCurrent, deviation("input.diodeCurrent"));
        var voltage = factor(LitDiode::logVoltage, deviation("input.diodeVoltage"));
        var peak = deviation("input.diodePower");
        var power = factor(LitDiode::logPower, peak);
        return new Scaling(
                current,
                clips.voltageV().times(voltage),
                measuredFillFactor,
                measuredFillFactor.times(factor(LitDiode::logFillFactor, peak)),
                measuredFillFactor.times(power).over(current.times(voltage)),
                null);
    }

    private Term deviation(String name) {
        return inputs.add(Input.normal(name, 0, "1", 1));
    }

    private Term factor(ToDoubleBiFunction<LitDiode, Double> logFactor, Term deviation) {
        var best = ratio.span().tabulate(TABLE_POINTS, r -> diodes.best(diode -> logFactor.applyAsDouble(diode, r)));
        var spread = ratio.span()
                .tabulate(
                        TABLE_POINTS,
                        r -> Math.signum(Math.log(r)) * diodes.spread(diode -> logFactor.applyAsDouble(diode, r)));
        return values -> {
            var logRatio = ratio.logarithm().in(values);
            return Math.exp(best.at(logRatio) + deviation.in(values) * spread.at(logRatio));
        };
    }
}
