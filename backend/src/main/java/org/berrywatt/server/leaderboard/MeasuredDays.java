package org.berrywatt.server.leaderboard;

import static java.util.stream.Collectors.toMap;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.berrywatt.contract.CellCurveAnswer;
import org.berrywatt.contract.Figure;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.light.Station;
import org.springframework.stereotype.Service;

/** Everything measured of a day's cells at once, for whoever compares them. */
@Service
public class MeasuredDays {

    private final DayRecords records;
    private final KnownCells known;
    private final Leaderboards leaderboards;

    MeasuredDays(DayRecords records, KnownCells known, Leaderboards leaderboards) {
        this.records = records;
        this.known = known;
        this.leaderboards = leaderboards;
    }

    /**
     * A day with every cell's figures.
     *
     * @throws org.berrywatt.server.platform.Refusal {@code notFound} when there is no such day
     */
    public MeasuredDay of(UUID labDayId) {
        return measured(records.of(labDayId), Map.of());
    }

    /** The same with every cell's ratio to the control cell. */
    public MeasuredDay withRatios(UUID labDayId) {
        DayRecord record = records.of(labDayId);
        Rating rating = new Rating(record, known);
        Map<UUID, Figure> ratios = new HashMap<>();
        record.cells().forEach(cell -> rating.ratioToControl(cell).ifPresent(found -> ratios.put(cell.id(), found)));
        return measured(record, ratios);
    }

    /** The load sweeps that count. */
    public List<CellCurveAnswer> curves(UUID labDayId) {
        DayRecord record = records.of(labDayId);
        CellJudge judge = new CellJudge(record, known);
        return record.cells().stream()
                .flatMap(cell -> CellCurves.of(cell, record, judge).stream())
                .toList();
    }

    private MeasuredDay measured(DayRecord record, Map<UUID, Figure> ratios) {
        return new MeasuredDay(
                record.day(),
                leaderboards.state(record),
                record.cells().stream().collect(toMap(Cell::id, Function.identity())),
                stations(record),
                Map.copyOf(ratios));
    }

    private static Map<UUID, Station> stations(DayRecord record) {
        Map<UUID, Station> stations = new HashMap<>();
        record.cells()
                .forEach(cell -> Gathered.of(cell, record).station().ifPresent(at -> stations.put(cell.id(), at)));
        return Map.copyOf(stations);
    }
}
