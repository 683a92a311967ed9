package org.berrywatt.reading;

/** Whether a number is believable. */
public enum Verdict {
    /** Within the usual range. */
    FINE,
    /** Outside the usual range: taken when its writer confirms it. */
    UNUSUAL,
    /** Outside what can be: refused. */
    IMPOSSIBLE
}
