package org.berrywatt.normalise;

import org.berrywatt.curve.OpenCircuitLaw;

/**
 * Where the open-circuit voltage of a cell lies under another light: between the laws of an ideal diode and of the leakiest
 * cell that agrees with what was measured.
 *
 * @param shuntShare the most that the shunt may take of the photocurrent at open circuit, in [0, 1]
 */
record VoltageBounds(double shuntShare) {
    private static final double CELL_TEMPERATURE_C = CellTemperature.REFERENCE_C;
    static final double LOWEST_IDEALITY = 1;
    static final double HIGHEST_IDEALITY = 3;
    /** Energy between the conduction band of titanium dioxide and the iodide couple, over the elementary charge (from memory). */
    static final double CEILING_V = 0.9;

    double diode(double voltageV, double ratio) {
        return new OpenCircuitLaw(LOWEST_IDEALITY, 0, CELL_TEMPERATURE_C).voltageV(voltageV, ratio);
    }

    /** The leaky law, which cannot lift a voltage above the ceiling of its materials. */
    double leaky(double voltageV, double ratio) {
        var law = new OpenCircuitLaw(HIGHEST_IDEALITY, shuntShare, CELL_TEMPERATURE_C);
        return Math.min(law.voltageV(voltageV, ratio), Math.max(CEILING_V, Math.max(voltageV, diode(voltageV, ratio))));
    }

    double middle(double voltageV, double ratio) {
        return (diode(voltageV, ratio) + leaky(voltageV, ratio)) / 2;
    }

    /** Half the way from the law of the ideal diode to the leaky one; its sign does not matter. */
    double halfWidth(double voltageV, double ratio) {
        return (leaky(voltageV, ratio) - diode(voltageV, ratio)) / 2;
    }
}
