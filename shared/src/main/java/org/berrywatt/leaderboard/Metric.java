package org.berrywatt.leaderboard;

/** What cells are compared by; more is better. */
public enum Metric {
    /** Maximum power per area at reference light, in W/m². The default. */
    POWER_DENSITY("powerDensity"),
    /** Photocurrent per area at short circuit and reference light, in A/m². */
    CURRENT_DENSITY("currentDensity"),
    /** Open-circuit voltage at reference light, in V. */
    VOLTAGE("voltage"),
    /** Maximum power over the light on the cell, as measured, for cells of one station only: nothing is brought to other light. */
    EFFICIENCY_AS_MEASURED("efficiencyAsMeasured"),
    /** Power later over power when settled, in [0, ∞). */
    RETENTION("retention"),
    /** Working cells over declared cells, in [0, 1]. */
    YIELD("yield"),
    /** Power density over that of the day's control cell. */
    RATIO_TO_CONTROL("ratioToControl");

    private final String key;

    Metric(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
