package org.berrywatt.curve;

import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Shape;

/**
 * Resistors put across a cell one after the other, and what the meter beside them takes. Ohm's law gives the number that was
 * not read.
 *
 * @param tolerance largest promised error of a resistor as a part of its nominal value, in [0, 1)
 * @param meterOhm input resistance of the voltage range, in (0, ∞]; it lies beside the load
 */
public record LoadBox(double tolerance, double meterOhm) {
    /** A gold ring of the colour code (IEC 60062); that loose resistors of a school have one is common practice, no source. */
    public static final double GOLD_RING = 0.05;

    /** A voltage shown twice over, in voltage and in the current that follows, counts twice in the power V²/R. */
    private static final double SHARED = Math.sqrt(3);

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException when either lies outside its domain
     */
    public LoadBox {
        if (!(tolerance >= 0 && tolerance < 1 && meterOhm > 0)) {
            throw new IllegalArgumentException("a load box has a tolerance in [0, 1) and a meter in (0, ∞] ohm, not "
                    + tolerance + " and " + meterOhm + " ohm");
        }
    }

    /**
     * The point of a voltage read across a load: I = V/R + V/Rmeter. On 100 kΩ a meter of 10 MΩ takes one per cent.
     *
     * <p>The error of the voltage is in both numbers. Taken as independent, that of the current is widened until the power
     * has the uncertainty of V²/R (JCGM 100:2008, 5.1.6).
     *
     * @param loadOhm nominal, in (0, ∞]; infinite without a load
     */
    public SweepPoint atVoltage(double loadOhm, Estimate voltageV) {
        var throughLoadA = voltageV.value() / loadOhm;
        var currentA = throughLoadA + voltageV.value() / meterOhm;
        var meterA = SHARED * voltageV.standardUncertainty() * (1 / loadOhm + 1 / meterOhm);
        return new SweepPoint(
                voltageV.value(),
                currentA,
                voltageV.standardUncertainty(),
                Math.hypot(meterA, throughLoadA * relativeUncertainty()));
    }

    /**
     * The point of a current read through a load and the meter behind it: V = I (R + Rburden).
     *
     * @param loadOhm nominal, in [0, ∞)
     * @param burdenOhm of the current range, in [0, ∞)
     */
    public SweepPoint atCurrent(double loadOhm, double burdenOhm, Estimate currentA) {
        var voltageV = currentA.value() * (loadOhm + burdenOhm);
        var meterV = SHARED * currentA.standardUncertainty() * (loadOhm + burdenOhm);
        return new SweepPoint(
                voltageV,
                currentA.value(),
                Math.hypot(meterV, currentA.value() * loadOhm * relativeUncertainty()),
                currentA.standardUncertainty());
    }

    private double relativeUncertainty() {
        return Shape.RECTANGULAR.standardUncertainty(tolerance);
    }
}
