package org.berrywatt.curve;

/** What can be wrong with a load sweep as a whole. */
public enum SweepFault {
    /** A voltage or current is not a number, or larger than any cell gives. */
    NOT_FINITE,
    /** Fewer than five points of distinct load. */
    TOO_FEW_POINTS,
    /** All points lie at nearly the same voltage or nearly the same current. */
    NO_SPREAD,
    /** Too few points deliver power: both voltage and current above 0. */
    WRONG_QUADRANT,
    /** The current does not fall as the voltage rises, so that the fill factor is not in (0, 1). */
    NOT_FALLING
}
