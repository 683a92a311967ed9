package org.berrywatt.curve;

/** What can be wrong with a load sweep as a whole. */
public enum SweepFault {
    /** A voltage or current is not a finite number. */
    NOT_FINITE,
    /** Fewer than five distinct points. */
    TOO_FEW_POINTS,
    /** All points lie at nearly the same voltage or nearly the same current. */
    NO_SPREAD,
    /** Too few points deliver power: both voltage and current above 0. */
    WRONG_QUADRANT
}
