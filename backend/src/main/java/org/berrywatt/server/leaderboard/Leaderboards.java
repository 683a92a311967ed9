package org.berrywatt.server.leaderboard;

import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.CellResultAnswer;
import org.berrywatt.contract.ControlCellAnswer;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.contract.LightPreviewAnswer;
import org.berrywatt.contract.LightUseAnswer;
import org.berrywatt.contract.SettlingAnswer;
import org.berrywatt.contract.calculation.NormalisationRequest;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.light.Lamp;
import org.berrywatt.normalise.Reference;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.light.Station;
import org.springframework.stereotype.Service;

/**
 * Results and places, computed from what is recorded whenever somebody asks: nothing of them is stored, so that the same
 * records always give the same leaderboard.
 */
@Service
public class Leaderboards {

    private static final double CM2_PER_M2 = 1e4;

    private final DayRecords records;
    private final KnownCells known;
    private final KnownBoards boards;

    Leaderboards(DayRecords records, KnownCells known, KnownBoards boards) {
        this.records = records;
        this.known = known;
        this.boards = boards;
    }

    /**
     * The leaderboard of a lab day as recorded now.
     *
     * @throws org.berrywatt.server.platform.Refusal {@code notFound} when there is no such day
     */
    public LeaderboardState of(UUID labDayId) {
        return state(records.of(labDayId));
    }

    LeaderboardState state(DayRecord record) {
        LabDay day = record.day();
        return new LeaderboardState(
                day.id(),
                day.title(),
                Rule.of(day.rule()).metric().key(),
                day.rule(),
                day.referenceIrradianceWm2(),
                day.referenceAreaM2() * CM2_PER_M2,
                day.entryOpen(),
                new TeamStandings(record, known, boards).ranked());
    }

    /** Which cells lean on which reading of a station's light. */
    List<LightUseAnswer> leaningOn(Station station) {
        DayRecord record = records.of(station.labDayId());
        return new LightUses(record, station, new CellJudge(record, known)).all();
    }

    /** What would move if a station were another; the board of the day stays as it is. */
    LightPreviewAnswer ifStationWere(Station corrected) {
        DayRecord record = records.of(corrected.labDayId());
        return LightMoves.between(
                new TeamStandings(record, known, boards).ranked(),
                new TeamStandings(record.with(corrected), known, new KnownBoards()).ranked());
    }

    /** What a cell tells of the stations at which it was read. */
    ControlCellAnswer asControl(Cell control) {
        return ControlCourse.of(control, records.of(control.labDayId()));
    }

    /** How a cell settles. */
    public SettlingAnswer settling(Cell cell) {
        return SettlingAnswers.of(
                Gathered.of(cell, records.of(cell.labDayId())).history().latestSeries());
    }

    /** The result of a cell with its worked calculation. */
    public CellResultAnswer result(Cell cell) {
        DayRecord record = records.of(cell.labDayId());
        return result(cell, new Rating(record, known), record);
    }

    /** The results of all cells of a day as recorded at one moment, by cell. */
    public Map<UUID, CellResultAnswer> results(UUID labDayId) {
        DayRecord record = records.of(labDayId);
        Rating rating = new Rating(record, known);
        return record.cells().stream().collect(toMap(Cell::id, cell -> result(cell, rating, record)));
    }

    private static CellResultAnswer result(Cell cell, Rating rating, DayRecord record) {
        return CellResults.of(
                rating.rate(cell),
                rating.rule(),
                rating.course(cell),
                numbers(cell, record).orElse(null));
    }

    /** For the calculator, which knows lamps by their kind; a spectrum of some station is too long for an address. */
    private static Optional<NormalisationRequest> numbers(Cell cell, DayRecord record) {
        LabDay day = record.day();
        Reference reference = new Reference(day.referenceIrradianceWm2(), day.referenceAreaM2());
        return Gathered.of(cell, record)
                .complete()
                .filter(read -> read.light().irradiance().lamp() instanceof Lamp)
                .map(read -> CellNumbers.of(read, reference));
    }
}
