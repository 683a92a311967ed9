package org.berrywatt.meter;

/**
 * A current range of a meter. The meter is a small resistor in the cell's way, its burden, so that the cell is measured at
 * V = I R instead of at V = 0.
 *
 * @param fullScaleA in (0, ∞)
 * @param resolutionA step of the last digit, in (0, ∞)
 * @param resistanceOhm shunt and fuse together, in [0, ∞)
 */
public record CurrentRange(double fullScaleA, double resolutionA, double resistanceOhm) {

    /** Steps are quotients of decimal numbers and may differ in their last bits. */
    private static final double ROUNDING = 0.99;

    /**
     * A range by the voltage over its shunt at full scale.
     *
     * @param shuntFullScaleV voltage over the shunt at full scale; 0.2 V in most cheap meters (common practice, no source)
     * @param fuseOhm resistance of the fuse
     */
    static CurrentRange of(double fullScaleA, int counts, double shuntFullScaleV, double fuseOhm) {
        return new CurrentRange(fullScaleA, fullScaleA / counts, shuntFullScaleV / fullScaleA + fuseOhm);
    }

    /** Whether a reading with such a last digit fits on the display of this range. */
    boolean shows(double readingA, double stepA) {
        return fullScaleA >= Math.abs(readingA) && resolutionA >= stepA * ROUNDING;
    }
}
