package org.berrywatt.server.leaderboard;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.Remark;
import org.berrywatt.leaderboard.Candidate;
import org.berrywatt.leaderboard.CellEntry;
import org.berrywatt.leaderboard.Count;
import org.berrywatt.leaderboard.CurrentRetention;
import org.berrywatt.leaderboard.MeasuredCell;
import org.berrywatt.leaderboard.Metric;
import org.berrywatt.leaderboard.Obstacle;
import org.berrywatt.leaderboard.RatioToControl;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.leaderboard.Score;
import org.berrywatt.leaderboard.Verification;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.light.Station;
import org.berrywatt.uncertainty.Deviates;
import org.jspecify.annotations.Nullable;

/** What the rule of a day makes of its cells. */
final class Rating {

    private final DayRecord record;
    private final CellJudge judge;
    private final KnownCells known;
    private final Rule rule;
    private final Deviates deviates;
    private final String mainStation;

    Rating(DayRecord record, KnownCells known) {
        this.record = record;
        this.known = known;
        this.judge = new CellJudge(record, known);
        this.rule = Rule.of(record.day().rule());
        this.deviates = Draws.of(record.day().id());
        this.mainStation =
                MainStation.of(record.cells().stream().map(judge::judge).toList());
    }

    Rule rule() {
        return rule;
    }

    Rated rate(Cell cell) {
        Judged judged = judge.judge(cell);
        if (judged instanceof Judged.Counts counts) {
            Gathered gathered = Gathered.of(cell, record);
            Score score = score(rule.metric(), gathered, counts);
            CellEntry entry = rule.entry(new Candidate(cell.id(), score, verification(gathered, score)));
            return new Rated(judged, entry, score, obstacle(entry, counts));
        }
        UUID id = cell.id();
        return new Rated(
                judged,
                judged instanceof Judged.Failed ? new CellEntry.Failed(id) : new CellEntry.Waiting(id),
                null,
                null);
    }

    /** What is left of a cell's current, whatever the day ranks by; empty for one that was not read again later. */
    Optional<Kept> retention(Cell cell) {
        Gathered gathered = Gathered.of(cell, record);
        return judge.judge(cell) instanceof Judged.Counts counts
                ? Kept.of(score(new CurrentRetention(), gathered, counts), measured(gathered, counts))
                : Optional.empty();
    }

    /** Power per area over that of the control cell, whatever the day ranks by; empty where the two cannot be compared. */
    Optional<Figure> ratioToControl(Cell cell) {
        Gathered gathered = Gathered.of(cell, record);
        return judge.judge(cell) instanceof Judged.Counts counts
                        && score(new RatioToControl(), gathered, counts) instanceof Score.Found found
                ? Optional.of(Figures.of(found))
                : Optional.empty();
    }

    private @Nullable Remark obstacle(CellEntry entry, Judged.Counts counts) {
        return entry instanceof CellEntry.Excluded excluded
                ? Remarks.obstacle(
                        excluded.obstacle(),
                        stationName(excluded.obstacle() == Obstacle.OTHER_STATION ? mainStation : counts.station()),
                        record.control().map(Cell::label).orElse(""))
                : null;
    }

    private String stationName(String id) {
        return record.stations().values().stream()
                .filter(station -> station.id().toString().equals(id))
                .map(Station::name)
                .findFirst()
                .orElse("");
    }

    /** What its later readings tell of a settled cell. */
    Optional<Remark> course(Cell cell) {
        return cell.failure().isPresent()
                ? Optional.empty()
                : new SettledReadings(record, judge)
                        .retention(Gathered.of(cell, record))
                        .map(Remarks::kept);
    }

    private Score score(Metric metric, Gathered gathered, Judged.Counts counts) {
        return known.score(metric, measured(gathered, counts), deviates);
    }

    private MeasuredCell measured(Gathered gathered, Judged.Counts counts) {
        return new MeasuredCell(
                counts.reading(),
                counts.station(),
                mainStation,
                new ControlReadings(record, judge).near(gathered),
                new SettledReadings(record, judge).of(gathered));
    }

    private Verification verification(Gathered gathered, Score score) {
        return score instanceof Score.Found found && Rule.isSensible(rule.metric(), Count.BEST_VERIFIED)
                ? Verification.of(found.value(), byOthers(gathered))
                : Verification.NOT_READ_AGAIN;
    }

    /** What others found for the same cell; a reading with which the metric can do nothing says nothing. */
    private List<Double> byOthers(Gathered gathered) {
        return gathered.byOthers(record).stream()
                .flatMap(other -> byOther(other).stream())
                .toList();
    }

    private Optional<Double> byOther(Gathered other) {
        if (judge.judge(other) instanceof Judged.Counts counts) {
            return score(rule.metric(), other, counts) instanceof Score.Found found
                    ? Optional.of(found.value())
                    : Optional.empty();
        }
        return Optional.of(Double.NaN);
    }
}
