package org.berrywatt.server.leaderboard;

import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.RankedFigure;
import org.berrywatt.contract.Remark;
import org.berrywatt.leaderboard.CellEntry;
import org.berrywatt.leaderboard.Metric;
import org.berrywatt.leaderboard.Score;
import org.jspecify.annotations.Nullable;

/**
 * A judged cell under the rule of its day.
 *
 * @param entry how the ranking takes it
 * @param score what the metric makes of it; null while it has no result
 * @param obstacle why the rule does not take its result; null when it does
 */
record Rated(
        Judged judged,
        CellEntry entry,
        @Nullable Score score,
        @Nullable Remark obstacle) {

    /** As the Wall shows it. */
    CellStanding standing(Metric metric) {
        if (judged instanceof Judged.Counts counts) {
            return standing(
                    "counts", figure(metric), Figures.of(counts.reading().powerDensity()), remark(counts));
        }
        return judged instanceof Judged.Waiting waiting
                ? standing("waiting", null, null, waiting.missing().get(0))
                : standing("failed", null, null, ((Judged.Failed) judged).how());
    }

    private CellStanding standing(
            String standing, @Nullable RankedFigure figure, @Nullable Figure power, @Nullable Remark remark) {
        return new CellStanding(
                judged.cell().id(),
                judged.cell().label(),
                standing,
                entry instanceof CellEntry.Counts,
                figure,
                power,
                remark);
    }

    @Nullable
    RankedFigure figure(Metric metric) {
        return score instanceof Score.Found found ? Figures.of(found, metric) : null;
    }

    private @Nullable Remark remark(Judged.Counts counts) {
        return obstacle != null ? obstacle : counts.notes().stream().findFirst().orElse(null);
    }
}
