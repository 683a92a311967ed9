package org.berrywatt.quantity;

/** What can be wrong with a typed number. */
public enum Slip {
    /** Nothing was typed. */
    EMPTY,
    /** The text is no number: letters among the digits, or signs in places that fit neither way of writing. */
    NOT_A_NUMBER,
    /** The unit is missing or its spelling means none. */
    UNKNOWN_UNIT,
    /** The unit measures something else. */
    WRONG_UNIT
}
