package org.berrywatt.server.reading;

import org.berrywatt.reading.LeadSwap;
import org.berrywatt.server.typed.TypedAmount;
import org.berrywatt.uncertainty.Estimate;

/** A covered cell with the leads both ways, before any meter is known. */
final class Leads {

    private Leads() {}

    static LeadSwap swap(TypedAmount straight, TypedAmount swapped) {
        return new LeadSwap(
                Estimate.exact(straight.valueSi()),
                Estimate.exact(swapped.valueSi()),
                Math.max(straight.resolutionSi(), swapped.resolutionSi()));
    }
}
