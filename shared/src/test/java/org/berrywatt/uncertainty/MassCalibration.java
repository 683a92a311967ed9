package org.berrywatt.uncertainty;

import java.util.List;

/** Calibration of a weight of 100 g in air, JCGM 101:2008, 9.3: inputs in mg and kg/m³. */
final class MassCalibration {
    static final List<Input> INPUTS = List.of(
            Input.normal("mRc", 100_000.000, "mg", 0.050),
            Input.normal("dmRc", 1.234, "mg", 0.020),
            Input.rectangular("airDensity", 1.20, "kg/m³", 0.10),
            Input.rectangular("weightDensity", 8000, "kg/m³", 1000),
            Input.rectangular("referenceDensity", 8000, "kg/m³", 50));

    private MassCalibration() {}

    static double deviationMg(double[] x) {
        return (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000;
    }
}
