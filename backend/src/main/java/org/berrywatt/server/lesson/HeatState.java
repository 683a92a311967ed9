package org.berrywatt.server.lesson;

/** How a cell on a heater stands, by the time alone. */
public enum HeatState {
    /** On the heater, its time is not over. */
    HEATING,
    /** On the heater, its time is over: take it out, or let it cool there. */
    HOLD_OVER,
    /** Taken out and still hot. */
    COOLING,
    /** Taken out long enough to be touched after a check. */
    TOUCHABLE
}
