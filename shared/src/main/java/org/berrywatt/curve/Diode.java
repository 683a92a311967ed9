package org.berrywatt.curve;

/**
 * Single-diode model of a solar cell, delivered current positive:
 *
 * <pre>I = Iph - I0 (exp((V + I Rs)/(n kT/q)) - 1) - (V + I Rs)/Rsh</pre>
 *
 * <p>Every question is answered by way of the junction voltage V + I Rs, in which the model is explicit; results hold
 * to about 1e-12 relative (absolute, against the photocurrent, where a current is near 0) from silicon modules to leaky
 * home-made cells. A current beyond the range of a double is returned as the most negative finite one.
 *
 * <p>Source: S. M. Sze, K. K. Ng, Physics of Semiconductor Devices, 3rd ed. 2007, chapter 13 (from memory).
 *
 * @param photocurrentA in [0, infinity)
 * @param saturationCurrentA in (0, infinity)
 * @param idealityFactor in (0, infinity); times the number of cells in series for a module
 * @param seriesResistanceOhm in [0, infinity)
 * @param shuntResistanceOhm in (0, infinity]
 * @param temperatureC in (-273.15, infinity)
 */
public record Diode(
        double photocurrentA,
        double saturationCurrentA,
        double idealityFactor,
        double seriesResistanceOhm,
        double shuntResistanceOhm,
        double temperatureC) {

    /** Current at a terminal voltage of any sign. */
    public double currentA(double voltageV) {
        var junctionV = junctionAtVoltage(voltageV);
        var diodeA = diodeCurrentA(junctionV);
        return isDropTheBetterWitness(diodeA)
                ? (junctionV - voltageV) / seriesResistanceOhm
                : delivered(diodeA, junctionV);
    }

    /** Terminal voltage at a current, in (-infinity, infinity); below photocurrent + saturation current without a shunt. */
    public double voltageV(double currentA) {
        return junctionAtCurrent(currentA) - currentA * seriesResistanceOhm;
    }

    /** Current at 0 V, in [0, photocurrent]. */
    public double shortCircuitCurrentA() {
        return currentA(0);
    }

    /** Voltage at 0 A, in [0, infinity). */
    public double openCircuitVoltageV() {
        return voltageV(0);
    }

    /** The operating point of greatest power between short and open circuit; both 0 without light. */
    public MaximumPower maximumPower() {
        var junctionV = new PowerPeak(this).junctionV();
        var currentA = current(junctionV);
        return new MaximumPower(junctionV - currentA * seriesResistanceOhm, currentA);
    }

    /** The same cell under another light: only the photocurrent scales (IEC 60891 procedure 3, common practice). */
    public Diode underLight(double ratio) {
        return new Diode(
                photocurrentA * ratio,
                saturationCurrentA,
                idealityFactor,
                seriesResistanceOhm,
                shuntResistanceOhm,
                temperatureC);
    }

    double junctionAtVoltage(double voltageV) {
        var loaded = new LinearPlusExponential(
                1 + seriesResistanceOhm / shuntResistanceOhm, seriesResistanceOhm * saturationCurrentA, scaleV());
        return loaded.root(voltageV + seriesResistanceOhm * photocurrentA);
    }

    double junctionAtCurrent(double currentA) {
        return new LinearPlusExponential(1 / shuntResistanceOhm, saturationCurrentA, scaleV())
                .root(photocurrentA - currentA);
    }

    /** Current as an explicit function of the junction voltage. */
    double current(double junctionV) {
        return delivered(diodeCurrentA(junctionV), junctionV);
    }

    /** n kT/q in V. */
    double scaleV() {
        return idealityFactor * ThermalVoltage.atCelsius(temperatureC);
    }

    /** Conductance of diode and shunt together at a junction voltage, in S. */
    double conductanceS(double junctionV) {
        return conductanceOf(diodeCurrentA(junctionV));
    }

    private double conductanceOf(double diodeA) {
        return (diodeA + saturationCurrentA) / scaleV() + 1 / shuntResistanceOhm;
    }

    private double diodeCurrentA(double junctionV) {
        return saturationCurrentA * Exponential.lessOne(junctionV / scaleV());
    }

    private double delivered(double diodeA, double junctionV) {
        return Math.max(-Double.MAX_VALUE, photocurrentA - diodeA - junctionV / shuntResistanceOhm);
    }

    /** Fall of the terminal current with the terminal voltage at a junction voltage, in S. */
    double terminalConductanceS(double junctionV) {
        var conductance = conductanceS(junctionV);
        return conductance / (1 + seriesResistanceOhm * conductance);
    }

    /** A rounded junction voltage spoils {@link #current} by conductance, the drop over Rs by 1/Rs: take the milder. */
    private boolean isDropTheBetterWitness(double diodeA) {
        return conductanceOf(diodeA) * seriesResistanceOhm > 1;
    }
}
