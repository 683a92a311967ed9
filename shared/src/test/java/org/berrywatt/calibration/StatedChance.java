package org.berrywatt.calibration;

import java.util.Objects;
import org.berrywatt.leaderboard.Place;
import org.jspecify.annotations.Nullable;

/**
 * A stated chance to be above the next team, and whether it was so.
 *
 * @param stated in [0, 1]
 */
record StatedChance(double stated, boolean above) {

    /** Null where both teams truly have nothing, so that nobody can be above. */
    static @Nullable StatedChance of(Place place, double figureWm2, double nextWm2) {
        return figureWm2 == 0 && nextWm2 == 0
                ? null
                : new StatedChance(Objects.requireNonNull(place.chanceAboveNext()), figureWm2 > nextWm2);
    }
}
