package org.berrywatt.reading;

import org.berrywatt.uncertainty.Estimate;

/**
 * One quantity of a covered cell, read with the leads one way and then swapped. What the cell gives turns its sign with the
 * leads; the meter's zero stays: straight = own + zero, swapped = −own + zero.
 *
 * <p>Source: the left-right bias of a voltage comparison, P = (Y1 + Y2)/2 and the difference (Y1 − Y2)/2, NIST/SEMATECH
 * e-Handbook of Statistical Methods, section 2.3.3.1.1 (from memory).
 *
 * @param straight as the cell is read under light, in V or A
 * @param swapped the same with the leads swapped
 * @param resolution step of the coarser display's last digit, in [0, ∞)
 */
public record LeadSwap(Estimate straight, Estimate swapped, double resolution) {

    /** A meter's zero is off by this many steps of its last digit at most (common practice, no source). */
    public static final int ZERO_STEPS = 10;

    /**
     * What the cell gives in the dark. Where the rest is no zero of a meter, the cell changed between the two readings or one of
     * them is wrong, and own may be off by as much (rectangular).
     */
    public Estimate own() {
        double read = Math.hypot(straight.standardUncertainty(), swapped.standardUncertainty()) / 2;
        double changed = consistent() ? 0 : Math.abs(zero()) / Math.sqrt(3);
        return new Estimate((straight.value() - swapped.value()) / 2, Math.hypot(read, changed));
    }

    /** What the meter would show with nothing between its leads. */
    public double zero() {
        return (straight.value() + swapped.value()) / 2;
    }

    /** Whether the part that kept its sign is small enough for a meter's zero. */
    public boolean consistent() {
        return Math.abs(zero()) <= limit();
    }

    /** The largest zero that is believed, in [0, ∞). */
    public double limit() {
        return ZERO_STEPS * resolution;
    }
}
