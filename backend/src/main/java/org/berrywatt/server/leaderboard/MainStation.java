package org.berrywatt.server.leaderboard;

import java.util.Collection;
import org.berrywatt.leaderboard.BusiestStation;

/** The station at which most results of a day were measured. */
final class MainStation {

    private MainStation() {}

    static String of(Collection<Judged> cells) {
        return BusiestStation.of(cells.stream()
                .filter(Judged.Counts.class::isInstance)
                .map(cell -> ((Judged.Counts) cell).station())
                .toList());
    }
}
