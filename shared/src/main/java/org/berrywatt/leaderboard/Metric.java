package org.berrywatt.leaderboard;

import java.util.List;
import org.berrywatt.uncertainty.Deviates;

/** What cells are compared by; more is better. Each metric is a file of its own. */
public sealed interface Metric
        permits PowerDensity,
                CurrentDensity,
                OpenCircuitVoltage,
                EfficiencyAsMeasured,
                RatioToControl,
                CurrentRetention,
                Yield {

    /** Names the metric wherever it travels. */
    String key();

    /** Key of the unit: {@code "Wm2"}, {@code "Am2"}, {@code "V"}, {@code "part"} of 1 or {@code "times"} the control cell. */
    String unit();

    /** How a team's cells may count under it, the usual way first; the others make no sense with it. */
    List<Count> counts();

    /**
     * The figure of a cell, or what is missing for one.
     *
     * @param deviates the draws of the day, the same for all its cells
     */
    Score score(MeasuredCell cell, Deviates deviates);

    /** All of them, the default first. */
    static List<Metric> all() {
        return List.of(
                new PowerDensity(),
                new CurrentDensity(),
                new OpenCircuitVoltage(),
                new EfficiencyAsMeasured(),
                new RatioToControl(),
                new CurrentRetention(),
                new Yield());
    }
}
