package org.berrywatt.normalise;

import org.berrywatt.uncertainty.Input;

/** Scaling of a cell whose diode is not known: between laws that no cell can leave. Current is proportional to light. */
final class BoundedScaling {
    /**
     * Largest change of a measured fill factor per change of ln(light), relative: a series resistance that takes a quarter of Voc
     * at Isc lowers it so by Green's formula, 1.1 rs / (1 - 1.1 rs); a shunt works the other way and less.
     */
    private static final double FILL_FACTOR_PER_LOG_LIGHT = 0.35;

    private static final String FILL_FACTOR_LAW = "input.fillFactorLaw";
    private static final int TABLE_POINTS = 33;
    /** Part by which a voltage is moved to see how its law answers. */
    private static final double NEARBY = 0.01;

    private BoundedScaling() {}

    static Scaling of(SpotReading spot, ClipTerms clips, Ratio ratio, Inputs inputs) {
        var voltageV = spot.voltageV().value();
        var fillFactor = inputs.add(Input.rectangular(
                "input.fillFactor", FillFactorBounds.middle(voltageV), "1", FillFactorBounds.halfWidth(voltageV)));
        var between = new VoltageBetween(new VoltageBounds(ShuntShare.of(spot)), clips.voltageV(), ratio);
        var current = ratio.isFarAbove() ? current(ratio, law("input.currentLaw", inputs)) : Term.constant(1);
        return new Scaling(current, voltage(between, voltageV, inputs), fillFactor, fillFactor, fillFactor, between);
    }

    static Scaling of(LoadSweep sweep, Term measuredFillFactor, ClipTerms clips, Ratio ratio, Inputs inputs) {
        var voltageV = sweep.figures().openCircuitVoltageV().value();
        var law = law(FILL_FACTOR_LAW, inputs);
        var current = ratio.isFarAbove() ? current(ratio, law) : Term.constant(1);
        var between = new VoltageBetween(new VoltageBounds(ShuntShare.of(sweep)), clips.voltageV(), ratio);
        var fillFactor = measuredFillFactor.times(fillFactorChange(ratio, law));
        return new Scaling(
                current, voltage(between, voltageV, inputs), measuredFillFactor, fillFactor, fillFactor, between);
    }

    /**
     * On from where a fitted diode is no longer trusted.
     *
     * @param near at that light
     * @param nearV open-circuit voltage there
     * @param edge that light over the light of the reading
     * @param beyond reference light over that light
     */
    static Scaling onwards(Scaling near, LoadSweep sweep, double nearV, double edge, Ratio beyond, Inputs inputs) {
        var law = law(FILL_FACTOR_LAW, inputs);
        var current = SeriesLaw.currentFactor(SeriesShare.of(sweep, nearV, edge), beyond, law);
        var between = new VoltageBetween(new VoltageBounds(ShuntShare.of(sweep, nearV, edge)), near.voltageV(), beyond);
        var change = fillFactorChange(beyond, law);
        return new Scaling(
                near.currentFactor().times(current),
                voltage(between, nearV, inputs),
                near.fillFactorAsRead(),
                near.fillFactor().times(change),
                near.peakPart().times(change),
                between);
    }

    private static Term law(String name, Inputs inputs) {
        return inputs.add(Input.rectangular(name, 0, "1", 1));
    }

    /** Nothing is known of the series resistance: from where a fitted diode would end, the current may not grow any more. */
    private static Term current(Ratio ratio, Term law) {
        return SeriesLaw.currentFactor(1, ratio.beyond(), law);
    }

    private static Term fillFactorChange(Ratio ratio, Term law) {
        return law.times(ratio.logarithm()).then(part -> Math.exp(FILL_FACTOR_PER_LOG_LIGHT * part));
    }

    private static Term voltage(VoltageBetween between, double voltageV, Inputs inputs) {
        var law = law("input.voltageLaw", inputs);
        var middle = table(between.bounds()::middle, voltageV, between);
        var halfWidth = table(between.bounds()::halfWidth, voltageV, between);
        return middle.plus(law.times(halfWidth));
    }

    /** A law of voltage and ratio, straight in the voltage around the one it starts from. */
    private static Term table(VoltageLaw law, double voltageV, VoltageBetween between) {
        var nearV = NEARBY * voltageV;
        var ratio = between.ratio();
        var span = ratio.span();
        var at = span.tabulate(TABLE_POINTS, r -> law.voltageV(voltageV, r));
        var slope = span.tabulate(
                TABLE_POINTS,
                r -> (law.voltageV(voltageV + nearV, r) - law.voltageV(voltageV - nearV, r)) / (2 * nearV));
        return values -> {
            var logRatio = ratio.logarithm().in(values);
            return at.at(logRatio) + slope.at(logRatio) * (between.fromV().in(values) - voltageV);
        };
    }
}
