package org.berrywatt.normalise;

import org.berrywatt.uncertainty.Input;

/** Scaling of a cell whose diode is not known: between laws that no cell can leave. Current is proportional to light. */
final class BoundedScaling {
    /**
     * Largest change of a measured fill factor per change of ln(light), relative: a series resistance that takes a quarter of Voc
     * at Isc lowers it so by Green's formula, 1.1 rs / (1 - 1.1 rs); a shunt works the other way and less.
     */
    private static final double FILL_FACTOR_PER_LOG_LIGHT = 0.35;

    private static final int TABLE_POINTS = 33;
    /** Part by which a voltage is moved to see how its law answers. */
    private static final double NEARBY = 0.01;

    private BoundedScaling() {}

    static Scaling of(SpotReading spot, ClipTerms clips, Ratio ratio, Inputs inputs) {
        var voltageV = spot.voltageV().value();
        var fillFactor = inputs.add(Input.rectangular(
                "input.fillFactor", FillFactorBounds.middle(voltageV), "1", FillFactorBounds.halfWidth(voltageV)));
        var voltage = voltage(new VoltageBounds(ShuntShare.of(spot)), voltageV, clips, ratio, inputs);
        return new Scaling(Term.constant(1), voltage, fillFactor, fillFactor);
    }

    static Scaling of(LoadSweep sweep, Term measuredFillFactor, ClipTerms clips, Ratio ratio, Inputs inputs) {
        var voltageV = sweep.figures().openCircuitVoltageV().value();
        var law = inputs.add(Input.rectangular("input.fillFactorLaw", 0, "1", 1));
        var change = law.times(ratio.logarithm()).then(part -> Math.exp(FILL_FACTOR_PER_LOG_LIGHT * part));
        var voltage = voltage(new VoltageBounds(ShuntShare.of(sweep)), voltageV, clips, ratio, inputs);
        return new Scaling(Term.constant(1), voltage, measuredFillFactor, measuredFillFactor.times(change));
    }

    private static Term voltage(VoltageBounds bounds, double voltageV, ClipTerms clips, Ratio ratio, Inputs inputs) {
        var law = inputs.add(Input.rectangular("input.voltageLaw", 0, "1", 1));
        var middle = table(bounds::middle, voltageV, clips, ratio);
        var halfWidth = table(bounds::halfWidth, voltageV, clips, ratio);
        return middle.plus(law.times(halfWidth));
    }

    /** A law of voltage and ratio, straight in the voltage around the one that was read. */
    private static Term table(VoltageLaw law, double voltageV, ClipTerms clips, Ratio ratio) {
        var nearV = NEARBY * voltageV;
        var span = ratio.span();
        var at = span.tabulate(TABLE_POINTS, r -> law.voltageV(voltageV, r));
        var slope = span.tabulate(
                TABLE_POINTS,
                r -> (law.voltageV(voltageV + nearV, r) - law.voltageV(voltageV - nearV, r)) / (2 * nearV));
        return values -> {
            var logRatio = ratio.logarithm().in(values);
            return at.at(logRatio) + slope.at(logRatio) * (clips.voltageV().in(values) - voltageV);
        };
    }
}
