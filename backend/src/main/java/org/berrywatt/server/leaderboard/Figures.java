package org.berrywatt.server.leaderboard;

import org.berrywatt.contract.Figure;
import org.berrywatt.contract.RankedFigure;
import org.berrywatt.leaderboard.Metric;
import org.berrywatt.leaderboard.Score;
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

    /** What a cell is ranked by. */
    static RankedFigure of(Score.Found found, Metric metric) {
        return new RankedFigure(
                found.value(),
                metric.unit(),
                found.estimate().standardUncertainty(),
                found.interval().low(),
                found.interval().high());
    }

    static Figure of(Score.Found found) {
        return of(found.estimate(), found.interval());
    }

    /** With the interval that the trials found. */
    static Figure of(Estimate estimate, Interval interval) {
        return new Figure(estimate.value(), estimate.standardUncertainty(), interval.low(), interval.high());
    }

    /** What a team is ranked by. */
    static @Nullable RankedFigure of(@Nullable TeamFigure figure, Metric metric) {
        return figure == null
                ? null
                : new RankedFigure(
                        figure.value(),
                        metric.unit(),
                        figure.standardUncertainty(),
                        figure.interval().low(),
                        figure.interval().high());
    }
}
