package org.berrywatt.leaderboard;

/** What cells are compared by; more is better. */
public enum Metric {
    /** Maximum power per area at reference light, in W/m². The default. */
    POWER_DENSITY("powerDensity", "Wm2"),
    /** Photocurrent per area at short circuit and reference light, in A/m². */
    CURRENT_DENSITY("currentDensity", "Am2"),
    /** Open-circuit voltage at reference light, in V. */
    VOLTAGE("voltage", "V"),
    /** Maximum power over the light on the cell, as measured, for cells of one station only: nothing is brought to other light. */
    EFFICIENCY_AS_MEASURED("efficiencyAsMeasured", "part"),
    /** Power later over power when settled, in [0, ∞). */
    RETENTION("retention", "part"),
    /** Working cells over declared cells, in [0, 1]. */
    YIELD("yield", "part"),
    /** Power density over that of the day's control cell. */
    RATIO_TO_CONTROL("ratioToControl", "times");

    private final String key;
    private final String unit;

    Metric(String key, String unit) {
        this.key = key;
        this.unit = unit;
    }

    public String key() {
        return key;
    }

    /** Key of the unit: {@code "Wm2"}, {@code "Am2"}, {@code "V"}, {@code "part"} of 1 or {@code "times"} the control cell. */
    public String unit() {
        return unit;
    }
}
