package org.berrywatt.server.leaderboard;

import org.berrywatt.contract.Figure;
import org.berrywatt.contract.RankedFigure;
import org.berrywatt.leaderboard.Metric;
import org.berrywatt.leaderboard.Score;
import org.berrywatt.leaderboard.TeamFigure;
import org.berrywatt.server.worked.Worked;
import org.jspecify.annotations.Nullable;

/** What cells and teams are ranked by, as it travels. */
final class Figures {

    private Figures() {}

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
        return Worked.figure(found.estimate(), found.interval());
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
