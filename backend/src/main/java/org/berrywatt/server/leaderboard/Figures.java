package org.berrywatt.server.leaderboard;

import org.berrywatt.contract.Figure;
import org.berrywatt.leaderboard.TeamFigure;
import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Interval;
import org.jspecify.annotations.Nullable;

/** Estimates as they travel. */
final class Figures {

    private Figures() {}

    static Figure of(Estimate estimate) {
        return new Figure(estimate.value(), estimate.standardUncertainty(), estimate.low(), estimate.high());
    }

    /** With the interval that the trials found. */
    static Figure of(Estimate estimate, Interval interval) {
        return new Figure(estimate.value(), estimate.standardUncertainty(), interval.low(), interval.high());
    }

    static @Nullable Figure of(@Nullable TeamFigure figure) {
        return figure == null
                ? null
                : new Figure(
                        figure.value(),
                        figure.standardUncertainty(),
                        figure.interval().low(),
                        figure.interval().high());
    }
}
