package org.berrywatt.server.reading;

import static java.util.stream.Collectors.groupingBy;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Readings of cells, as typed on the meter. */
@Service
public class Readings {

    private final ReadingRepository readings;
    private final SetAsideRepository setAsides;
    private final ReadingWriting writing;
    private final Cells cells;
    private final Receipts receipts;

    Readings(
            ReadingRepository readings,
            SetAsideRepository setAsides,
            ReadingWriting writing,
            Cells cells,
            Receipts receipts) {
        this.readings = readings;
        this.setAsides = setAsides;
        this.writing = writing;
        this.cells = cells;
        this.receipts = receipts;
    }

    /**
     * Accepts a reading of a cell of the caller's own team, or of any cell for a teacher, who may also correct one while
     * the day is closed. A light reading may come before
     * the station's light has been read; it waits for that.
     *
     * @throws Refusal {@code labday.closed}, {@code station.missing}, {@code replaced.already}, {@code quantity.unusual}
     *     until confirmed, or when a field is refused
     */
    @Transactional
    public ReadingAnswer put(UUID id, ReadingRequest request, Caller caller, Instant at) {
        return put(id, request, request, caller, at);
    }

    /**
     * The same for a reading that was sent as something else.
     *
     * @param sent what must be the same when it comes again under this id
     */
    @Transactional
    public ReadingAnswer put(UUID id, Object sent, ReadingRequest request, Caller caller, Instant at) {
        var cell = cells.recall(Given.need("cellId", request.cellId()), caller);
        return receipts.once(
                id,
                sent,
                () -> ReadingAnswers.fresh(writing.accept(id, cell, request, caller, at)),
                () -> answer(cell.id(), id));
    }

    /** Every reading of a cell, oldest first, replaced ones among them; for its team and for teachers. */
    @Transactional(readOnly = true)
    public List<ReadingAnswer> list(UUID cellId, Caller caller) {
        cells.identify(cellId, caller);
        return answers(cellId);
    }

    /**
     * All readings of a day by cell, oldest first, corrections and set aside ones among them; for teachers.
     *
     * @throws Refusal {@code access.notAllowed}
     */
    @Transactional(readOnly = true)
    public Map<UUID, List<ReadingAnswer>> byCell(UUID labDayId, Caller caller) {
        caller.requireTeacher();
        return ReadingAnswers.of(readings.ofLabDay(labDayId), setAsides.ofLabDay(labDayId)).stream()
                .collect(groupingBy(ReadingAnswer::cellId));
    }

    /** The valid readings of a day's cells (corrections applied, without those set aside), oldest first. */
    @Transactional(readOnly = true)
    public List<RecordedReading> ofLabDay(UUID labDayId) {
        return readings.validOfLabDay(labDayId).stream()
                .map(ReadingEntity::view)
                .toList();
    }

    private ReadingAnswer answer(UUID cellId, UUID id) {
        return answers(cellId).stream()
                .filter(reading -> reading.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private List<ReadingAnswer> answers(UUID cellId) {
        var all = readings.ofCell(cellId);
        var ids = all.stream().map(ReadingEntity::id).toList();
        return ReadingAnswers.of(all, setAsides.findByReadingIdInOrderByPosition(ids));
    }
}
