package org.berrywatt.server.plan;

import java.util.ArrayList;
import java.util.List;
import org.berrywatt.contract.PlanRequest;

/**
 * A version of a plan as it is stored: what was asked for and which recipes were dealt. Everything else follows from it.
 *
 * @param settings as typed, with its seed
 * @param spread geometric standard deviation that the figures rest on
 * @param runs cells in the order of teams
 */
record PlanContent(PlanRequest settings, Spread spread, List<PlannedRun> runs) {

    PlanContent with(int place, PlannedRun changed) {
        var all = new ArrayList<>(runs);
        all.set(place, changed);
        return new PlanContent(settings, spread, List.copyOf(all));
    }

    long seed() {
        return settings.seed() == null ? 0 : settings.seed();
    }

    /**
     * @param from {@code usual}, {@code typed} or {@code earlier}
     * @param cells degrees of freedom of earlier cells, 0 otherwise
     */
    record Spread(double value, String from, int cells) {}

    /**
     * A planned cell.
     *
     * @param label name on cards and benches
     * @param team from 1
     * @param levels from 0, by factor
     */
    record PlannedRun(String label, int team, List<Integer> levels, boolean byHand) {}
}
