package org.berrywatt.findings;

/** Where a cell stands when findings are drawn. */
public enum Standing {
    /** It works and its power is known. */
    COUNTS,
    /** Something is missing, or it is not a solar cell yet. */
    WAITING,
    /** It broke at a stage. */
    FAILED
}
