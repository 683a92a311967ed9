package org.berrywatt.server.leaderboard;

import org.berrywatt.contract.Figure;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/** Estimates as they travel. */
final class Figures {

    private Figures() {}

    static Figure of(Estimate estimate) {
        return new Figure(estimate.value(), estimate.standardUncertainty(), estimate.low(), estimate.high());
    }

    static @Nullable Figure ofNullable(@Nullable Estimate estimate) {
        return estimate == null ? null : of(estimate);
    }
}
