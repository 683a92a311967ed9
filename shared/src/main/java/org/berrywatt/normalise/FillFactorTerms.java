package org.berrywatt.normalise;

import org.berrywatt.curve.IdealFillFactor;
import org.berrywatt.curve.ThermalVoltage;
import org.berrywatt.uncertainty.Input;

/** The fill factor as a term of the model: from the sweep, or between a straight line and an ideal diode. */
final class FillFactorTerms {
    static final double STRAIGHT_LINE = 0.25;
    /**
     * Largest change of a fill factor per change of ln(light), relative: a series resistance that takes a quarter of Voc at Isc
     * lowers it so by Green's formula, 1.1 rs / (1 - 1.1 rs); a shunt works the other way and less.
     */
    private static final double CHANGE_PER_LOG_LIGHT = 0.35;

    private FillFactorTerms() {}

    static Term of(UnderLight underLight, ClipTerms clips, Term ratio, Inputs inputs) {
        return underLight instanceof LoadSweep sweep
                ? sweep(sweep, clips, ratio, inputs)
                : spot((SpotReading) underLight, inputs);
    }

    private static Term sweep(LoadSweep sweep, ClipTerms clips, Term ratio, Inputs inputs) {
        var power = inputs.add(Input.normal("input.sweepPower", sweep.figures().maximumPowerW(), "W"));
        var law = inputs.add(Input.rectangular("input.fillFactorLaw", 0, "1", 1));
        return values -> power.in(values)
                / (clips.currentA().in(values) * clips.voltageV().in(values))
                * (1 + law.in(values) * CHANGE_PER_LOG_LIGHT * Math.log(ratio.in(values)));
    }

    private static Term spot(SpotReading spot, Inputs inputs) {
        var highest = highest(spot.voltageV().value());
        return inputs.add(Input.rectangular(
                "input.fillFactor", (STRAIGHT_LINE + highest) / 2, "1", (highest - STRAIGHT_LINE) / 2));
    }

    /** Fill factor of an ideal diode of this voltage. */
    static double highest(double voltageV) {
        return IdealFillFactor.at(voltageV / ThermalVoltage.atCelsius(VoltageBounds.CELL_TEMPERATURE_C));
    }
}
