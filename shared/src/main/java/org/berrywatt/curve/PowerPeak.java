package org.berrywatt.curve;

/**
 * Where the power of a diode peaks, found on the slope of power with voltage, which falls all the way from short to
 * open circuit because the curve is concave. Newton's rule, kept inside a shrinking bracket.
 */
record PowerPeak(Diode diode) {
    private static final int ENOUGH_STEPS = 200;

    double junctionV() {
        var low = diode.junctionAtVoltage(0);
        var high = diode.junctionAtCurrent(0);
        var x = 0.5 * (low + high);
        for (int step = 0; step < ENOUGH_STEPS && low < high; step++) {
            var slope = slope(x);
            if (slope > 0) {
                low = x;
            } else {
                high = x;
            }
            var next = x - slope / bend(x);
            next = next > low && next < high ? next : 0.5 * (low + high);
            if (Math.abs(next - x) <= 2 * Math.ulp(x)) {
                return next;
            }
            x = next;
        }
        return x;
    }

    /** dP/dV = I + V dI/dV, in A. */
    private double slope(double junctionV) {
        return diode.current(junctionV) - voltage(junctionV) * diode.terminalConductanceS(junctionV);
    }

    /** Derivative of {@link #slope} with the junction voltage. */
    private double bend(double junctionV) {
        var conductance = diode.conductanceS(junctionV);
        var rise = (conductance - 1 / diode.shuntResistanceOhm()) / diode.scaleV();
        var drop = 1 + diode.seriesResistanceOhm() * conductance;
        return -2 * conductance - voltage(junctionV) * rise / (drop * drop);
    }

    private double voltage(double junctionV) {
        return junctionV - diode.current(junctionV) * diode.seriesResistanceOhm();
    }
}
