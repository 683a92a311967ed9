package org.berrywatt.normalise;

import org.berrywatt.uncertainty.Input;

/**
 * What the clips gave under the light, as terms of the model.
 *
 * @param currentA short-circuit current as the meter showed it
 * @param burdenFactor short-circuit current over the current shown
 * @param voltageV open-circuit voltage
 */
record ClipTerms(Term currentA, Term burdenFactor, Term voltageV) {

    static ClipTerms of(UnderLight underLight, Inputs inputs) {
        return underLight instanceof SpotReading spot ? spot(spot, inputs) : sweep((LoadSweep) underLight, inputs);
    }

    private static ClipTerms spot(SpotReading spot, Inputs inputs) {
        var current = inputs.add("lightCurrent", spot.currentA(), "A");
        var voltage = inputs.add("lightVoltage", spot.voltageV(), "V");
        var widest = Burden.of(spot).widestFactor();
        var burden = inputs.add(Input.rectangular("input.burden", (1 + widest) / 2, "1", (widest - 1) / 2));
        return new ClipTerms(current, burden, voltage);
    }

    private static ClipTerms sweep(LoadSweep sweep, Inputs inputs) {
        var figures = sweep.figures();
        var current = inputs.add(Input.normal("input.sweepCurrent", figures.shortCircuitCurrentA(), "A"));
        var voltage = inputs.add(Input.normal("input.sweepVoltage", figures.openCircuitVoltageV(), "V"));
        return new ClipTerms(current, values -> 1, voltage);
    }
}
