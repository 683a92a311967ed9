package org.berrywatt.normalise;

import org.berrywatt.curve.Diode;

/**
 * A diode with its figures under the light of the reading, solved once, and how they change with the light.
 *
 * @param powerW greatest power
 */
record LitDiode(Diode diode, double shortCircuitCurrentA, double openCircuitVoltageV, double powerW) {

    static LitDiode of(Diode diode) {
        return new LitDiode(
                diode,
                diode.shortCircuitCurrentA(),
                diode.openCircuitVoltageV(),
                diode.maximumPower().powerW());
    }

    /** Logarithm of the change of the short-circuit current over that of the light. */
    double logCurrent(double ratio) {
        return Math.log(diode.underLight(ratio).shortCircuitCurrentA() / (ratio * shortCircuitCurrentA));
    }

    /** Logarithm of the change of the open-circuit voltage. */
    double logVoltage(double ratio) {
        return Math.log(diode.underLight(ratio).openCircuitVoltageV() / openCircuitVoltageV);
    }

    /** Logarithm of the change of the greatest power over that of the light. */
    double logPower(double ratio) {
        return Math.log(diode.underLight(ratio).maximumPower().powerW() / (ratio * powerW));
    }

    /** Logarithm of the change of the fill factor. */
    double logFillFactor(double ratio) {
        return logPower(ratio) - logCurrent(ratio) - logVoltage(ratio);
    }
}
