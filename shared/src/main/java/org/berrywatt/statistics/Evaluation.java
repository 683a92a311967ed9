package org.berrywatt.statistics;

/** How a p-value was found: by going through every rearrangement, or from the distribution of large samples. */
public enum Evaluation {
    EXACT,
    APPROXIMATE
}
