package org.berrywatt.normalise;

import org.berrywatt.uncertainty.Input;

/**
 * What the clips gave under the light, as terms of the model, with what the meter took from the cell given back.
 *
 * @param currentA short-circuit current
 * @param voltageV open-circuit voltage
 */
record ClipTerms(Term currentA, Term voltageV) {

    static ClipTerms of(CellMeasurement cell, Inputs inputs) {
        return cell.underLight() instanceof SpotReading spot
                ? spot(spot, cell.meter(), inputs)
                : sweep((LoadSweep) cell.underLight(), inputs);
    }

    private static ClipTerms spot(SpotReading spot, String meter, Inputs inputs) {
        var current = current(spot.currentA(), meter, inputs);
        var voltage = inputs.add("lightVoltage", spot.voltageV(), "V", meter);
        var burden = loading("input.burden", Loading.ofCurrent(spot), inputs);
        var load = loading("input.inputResistance", Loading.ofVoltage(spot), inputs);
        return new ClipTerms(current.times(burden), voltage.times(load));
    }

    /** A current that the display cannot tell from 0 lies anywhere up to the least that it would have shown. */
    private static Term current(Shown shown, String meter, Inputs inputs) {
        return shown.isBelowResolution()
                ? inputs.add(
                        Input.rectangular("input.currentBelowResolution", shown.likeliest(), "A", shown.likeliest()))
                : inputs.add("lightCurrent", shown, "A", meter);
    }

    private static Term loading(String name, Loading loading, Inputs inputs) {
        return inputs.add(Input.rectangular(name, loading.middleFactor(), "1", loading.halfWidth()));
    }

    private static ClipTerms sweep(LoadSweep sweep, Inputs inputs) {
        var figures = sweep.figures();
        return new ClipTerms(
                inputs.add(Input.normal("input.sweepCurrent", figures.shortCircuitCurrentA(), "A")),
                inputs.add(Input.normal("input.sweepVoltage", figures.openCircuitVoltageV(), "V")));
    }
}
