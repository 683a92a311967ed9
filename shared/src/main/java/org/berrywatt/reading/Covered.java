package org.berrywatt.reading;

import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * A covered cell as the meter showed it, and what swapped leads told of it.
 *
 * @param shown with the leads as they are under light
 * @param voltage with the leads swapped as well; null when it was read one way
 * @param current with the leads swapped as well; null when it was read one way
 */
public record Covered(
        Terminals shown,
        @Nullable LeadSwap voltage,
        @Nullable LeadSwap current) {

    /** Read with the leads one way: the meter's zero cannot be told from the cell. */
    public static Covered oneWay(Terminals shown) {
        return new Covered(shown, null, null);
    }

    /** What the cell itself gives, without the meter's zero where that is known. */
    Terminals own() {
        return new Terminals(own(shown.voltageV(), voltage), own(shown.currentA(), current));
    }

    private static @Nullable Estimate own(@Nullable Estimate shown, @Nullable LeadSwap swap) {
        return swap == null ? shown : swap.own();
    }
}
