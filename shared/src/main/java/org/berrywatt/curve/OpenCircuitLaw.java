package org.berrywatt.curve;

/**
 * How the open-circuit voltage of a cell follows the light, from its voltage under one light.
 *
 * <p>At open circuit the photocurrent, which is proportional to the light, flows off through the diode and the shunt:
 * {@code (1 - s) expm1(V'/(n kT/q)) / expm1(V/(n kT/q)) + s V'/V = ratio}. Without a shunt this is the log law of IEC 60891
 * procedure 2 with its saturation current kept, V + n kT/q ln(ratio) for V well above kT/q; through the shunt alone it is V
 * times the ratio. A real cell lies between the two.
 *
 * @param idealityFactor n, in (0, ∞)
 * @param shuntShare s, the part of the photocurrent that the shunt takes at the known voltage, in [0, 1]
 * @param temperatureC in (-273.15, ∞)
 */
public record OpenCircuitLaw(double idealityFactor, double shuntShare, double temperatureC) {

    /**
     * Open-circuit voltage under another light.
     *
     * @param voltageV under the known light, in (0, ∞)
     * @param ratio other light over known light, in (0, ∞)
     */
    public double voltageV(double voltageV, double ratio) {
        var scaleV = idealityFactor * ThermalVoltage.atCelsius(temperatureC);
        var weight = (1 - shuntShare) / Math.expm1(voltageV / scaleV);
        return new LinearPlusExponential(shuntShare / voltageV, weight, scaleV).root(ratio);
    }
}
