package org.berrywatt.plan;

/** What can be wrong with a plan that is asked for. */
public enum PlanFault {
    /** Nothing is varied. */
    NO_FACTOR,
    /** A factor has one level only; value: the factor. */
    ONE_LEVEL,
    /** A factor has more levels than a class can compare; value: the factor. */
    TOO_MANY_LEVELS,
    /** More factors than a class can keep apart. */
    TOO_MANY_FACTORS,
    /** Fewer cells than the levels need. */
    TOO_FEW_CELLS,
    /** Every recipe is forbidden. */
    EVERYTHING_FORBIDDEN,
    /** A level is in no recipe that may be built; value: the factor. */
    LEVEL_NEVER_ALLOWED,
    /** No time at all. */
    NO_TIME,
    /** Cells are to be baked, and there is nothing to bake them on. */
    NO_HEATER
}
