package org.berrywatt.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a class has at hand.
 *
 * @param heaters one or more
 * @param stations places to measure at, 1 or more
 * @param minutes time there is, 1 or more
 */
public record Workshop(List<Heater> heaters, int stations, int minutes) {

    /**
     * Lets pass what cells can be built with.
     *
     * @throws PlanRefused {@link PlanFault#NO_TIME}, {@link PlanFault#NO_HEATER}
     */
    void require() {
        if (minutes < 1) {
            throw new PlanRefused(PlanFault.NO_TIME, "", minutes, 1, "no time at all; say how many minutes there are");
        }
        if (heaters.isEmpty()) {
            throw new PlanRefused(PlanFault.NO_HEATER, "", 0, 1, "no heater; name one and its positions");
        }
    }

    Workshop withOneMoreHeater() {
        var more = new ArrayList<>(heaters);
        more.add(heaters.stream()
                .max(Comparator.comparingInt(Heater::positions))
                .map(largest -> new Heater(largest.name() + " +", largest.positions()))
                .orElseThrow());
        return new Workshop(more, stations, minutes);
    }

    Workshop withOneMoreStation() {
        return new Workshop(heaters, stations + 1, minutes);
    }
}
