package org.berrywatt.server.leaderboard;

import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.Remark;
import org.berrywatt.leaderboard.CellEntry;
import org.jspecify.annotations.Nullable;

/** A judged cell as the Wall shows it and as the ranking takes it. */
final class CellStandings {

    private CellStandings() {}

    static CellStanding of(Judged judged) {
        if (judged instanceof Judged.Counts counts) {
            return standing(
                    counts,
                    "counts",
                    power(counts),
                    counts.notes().stream().findFirst().orElse(null));
        }
        if (judged instanceof Judged.Waiting waiting) {
            return standing(waiting, "waiting", null, waiting.missing().get(0));
        }
        return standing(judged, "failed", null, ((Judged.Failed) judged).how());
    }

    static CellEntry entry(Judged judged) {
        if (judged instanceof Judged.Counts counts) {
            return new CellEntry.Counts(
                    counts.cell().id(),
                    counts.result().powerDensityWm2().estimate(),
                    counts.result().shared());
        }
        return judged instanceof Judged.Failed failed
                ? new CellEntry.Failed(failed.cell().id())
                : new CellEntry.Waiting(judged.cell().id());
    }

    private static CellStanding standing(
            Judged judged, String standing, @Nullable Figure power, @Nullable Remark remark) {
        return new CellStanding(judged.cell().id(), judged.cell().label(), standing, power, remark);
    }

    private static Figure power(Judged.Counts counts) {
        return Figures.of(counts.result().powerDensityWm2().estimate());
    }
}
