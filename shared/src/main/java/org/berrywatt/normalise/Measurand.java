package org.berrywatt.normalise;

/** The figures of a cell that have an interval. */
public enum Measurand {
    /** Short-circuit current per area at the reference light, in A/m². */
    CURRENT_DENSITY,
    /** Open-circuit voltage at the reference light, in V. */
    VOLTAGE,
    /** Fill factor at the reference light, as a part of 1. */
    FILL_FACTOR,
    /** Maximum power per area at the reference light, in W/m². */
    POWER_DENSITY,
    /**
     * Efficiency as measured: maximum power over total irradiance and area, under the light of the reading, as a part of 1. It
     * compares cells of one station; lamps of other colours give others.
     */
    EFFICIENCY
}
