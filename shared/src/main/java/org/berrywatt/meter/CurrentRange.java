package org.berrywatt.meter;

import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Shape;

/**
 * A current range of a meter. The meter is a small resistor in the cell's way, so that the cell is measured at V = I R
 * instead of at V = 0.
 *
 * @param fullScaleA in (0, ∞)
 * @param resolutionA step of the last digit, in (0, ∞)
 * @param resistanceOhm shunt and fuse together, in [0, ∞)
 */
public record CurrentRange(double fullScaleA, double resolutionA, double resistanceOhm) {

    /**
     * A range by the voltage over its shunt at full scale.
     *
     * @param shuntFullScaleV voltage over the shunt at full scale; 0.2 V in most cheap meters (common practice, no source)
     * @param fuseOhm resistance of the fuse
     */
    static CurrentRange of(double fullScaleA, int counts, double shuntFullScaleV, double fuseOhm) {
        return new CurrentRange(fullScaleA, fullScaleA / counts, shuntFullScaleV / fullScaleA + fuseOhm);
    }

    /** Voltage that the range takes from the cell at a current, in volts. */
    public double burdenV(double currentA) {
        return currentA * resistanceOhm;
    }

    /**
     * Where the short-circuit current lies when the range reads a current: between the reading, had the cell an ideal curve,
     * and reading / (1 − I R / Voc), were its curve a straight line. A cell's curve bends between the two.
     *
     * @param measuredA reading and its standard uncertainty
     * @param openCircuitV open-circuit voltage of the cell
     * @return middle of the two with the half-width as a rectangular contribution added to the reading's own; the reading
     *     unchanged when current or voltage are zero or of opposite signs
     */
    public Estimate shortCircuitCurrent(Estimate measuredA, double openCircuitV) {
        double part = burdenV(measuredA.value()) / openCircuitV;
        if (!(part > 0 && part < Double.POSITIVE_INFINITY)) {
            return measuredA;
        }
        double straight = measuredA.value() / (1 - Math.min(part, WORST_PART));
        double halfWidth = Math.abs(straight - measuredA.value()) / 2;
        return new Estimate(
                (measuredA.value() + straight) / 2,
                Math.hypot(measuredA.standardUncertainty(), Shape.RECTANGULAR.standardUncertainty(halfWidth)));
    }

    /** Beyond nine tenths of the open-circuit voltage the straight line says nothing any more. */
    private static final double WORST_PART = 0.9;
}
