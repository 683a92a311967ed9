package org.berrywatt.server.leaderboard;

import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.Remark;
import org.berrywatt.leaderboard.Candidate;
import org.berrywatt.leaderboard.CellEntry;
import org.berrywatt.leaderboard.Rule;
import org.jspecify.annotations.Nullable;

/** A judged cell as the Wall shows it and as the ranking takes it. */
final class CellStandings {

    private CellStandings() {}

    static CellStanding of(Judged judged, Rule rule, String mainStation) {
        if (judged instanceof Judged.Counts counts) {
            return standing(counts, "counts", power(counts), rule, remark(counts, entry(judged, rule, mainStation)));
        }
        if (judged instanceof Judged.Waiting waiting) {
            return standing(waiting, "waiting", null, rule, waiting.missing().get(0));
        }
        return standing(judged, "failed", null, rule, ((Judged.Failed) judged).how());
    }

    static CellEntry entry(Judged judged, Rule rule, String mainStation) {
        if (judged instanceof Judged.Counts counts) {
            return rule.entry(candidate(counts), mainStation);
        }
        return judged instanceof Judged.Failed failed
                ? new CellEntry.Failed(failed.cell().id())
                : new CellEntry.Waiting(judged.cell().id());
    }

    private static Candidate candidate(Judged.Counts counts) {
        return new Candidate(
                counts.cell().id(),
                counts.result().powerDensityWm2().value(),
                counts.drawn().trials(),
                counts.station(),
                counts.verification());
    }

    private static @Nullable Remark remark(Judged.Counts counts, CellEntry entry) {
        return entry instanceof CellEntry.Excluded excluded
                ? Remark.of("standing." + excluded.obstacle().key())
                : counts.notes().stream().findFirst().orElse(null);
    }

    private static CellStanding standing(
            Judged judged, String standing, @Nullable Figure power, Rule rule, @Nullable Remark remark) {
        return new CellStanding(
                judged.cell().id(),
                judged.cell().label(),
                standing,
                power == null ? null : Figures.of(power, rule.metric()),
                power,
                remark);
    }

    static Figure power(Judged.Counts counts) {
        return Figures.of(
                counts.result().powerDensityWm2().estimate(), counts.drawn().interval());
    }
}
