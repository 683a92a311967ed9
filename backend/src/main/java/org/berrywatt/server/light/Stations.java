package org.berrywatt.server.light;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.GridAnswer;
import org.berrywatt.contract.GridRequest;
import org.berrywatt.contract.IrradianceAnswer;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.contract.StationRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Light stations of a lab day and the readings of their light. */
@Service
public class Stations {

    private final StationRecords records;
    private final StationWriting writing;
    private final Receipts receipts;

    Stations(StationRecords records, StationWriting writing, Receipts receipts) {
        this.records = records;
        this.writing = writing;
        this.receipts = receipts;
    }

    /**
     * Sets up a station; for teachers, also while the day is closed.
     *
     * @throws Refusal {@code name.taken}, or when a field is refused
     */
    @Transactional
    public StationAnswer put(UUID id, StationRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        return receipts.once(
                id, request, () -> after(() -> writing.setUp(id, request, caller, at), id), () -> answer(id));
    }

    /**
     * Records a reading of a station's light, or corrects one, also while the day is closed; for teachers.
     *
     * @throws Refusal {@code labday.closed}, {@code labday.final}, {@code station.missing}, {@code replaced.already}, or when the number is
     *     refused
     */
    @Transactional
    public IrradianceAnswer putIrradiance(UUID id, IrradianceRequest request, Caller caller, Instant at) {
        return putIrradiance(id, request, request, caller, at);
    }

    /**
     * The same for a reading that was sent as something else.
     *
     * @param sent what must be the same when it comes again under this id
     */
    @Transactional
    public IrradianceAnswer putIrradiance(UUID id, Object sent, IrradianceRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        var station = writing.require(request.stationId());
        return receipts.once(
                id,
                sent,
                () -> StationAnswers.reading(after(() -> writing.read(id, request, caller, at), station), id),
                () -> StationAnswers.reading(answer(station), id));
    }

    /**
     * Records how even a station's light is; the latest grid counts. For teachers.
     *
     * @throws Refusal {@code labday.closed}, {@code station.missing}, {@code calculation.listLength}, or when a number is
     *     refused
     */
    @Transactional
    public GridAnswer putGrid(UUID id, GridRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        var station = writing.require(request.stationId());
        return receipts.once(
                id,
                request,
                () -> StationAnswers.grid(after(() -> writing.readGrid(id, request, caller, at), station), id),
                () -> StationAnswers.grid(answer(station), id));
    }

    /** The stations of a day in the order set up; for teachers and the teams of the day. */
    @Transactional(readOnly = true)
    public List<StationAnswer> list(UUID labDayId, Caller caller) {
        caller.requireLabDay(labDayId);
        return records.ofLabDay(labDayId).stream().map(StationAnswers::of).toList();
    }

    /**
     * The station as it would be after a correction of a reading of its light; nothing is written. For teachers.
     *
     * @throws Refusal {@code notFound} when there is no such reading, {@code replaced.already}, or when the number is refused
     */
    @Transactional(readOnly = true)
    public Station ifCorrected(UUID readingId, @Nullable Typed typed, Caller caller) {
        caller.requireTeacher();
        var record = records.ofReading(readingId).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
        return record.ifCorrected(readingId, StationConverter.light(typed));
    }

    /** The station of an id, or empty. */
    @Transactional(readOnly = true)
    public Optional<Station> find(UUID id) {
        return records.find(id).map(StationRecord::view);
    }

    /** The day of the station of an id, or empty. */
    @Transactional(readOnly = true)
    public Optional<UUID> labDayOf(UUID id) {
        return records.labDayOf(id);
    }

    /** The stations of a day in the order set up. */
    @Transactional(readOnly = true)
    public List<Station> ofLabDay(UUID labDayId) {
        return records.ofLabDay(labDayId).stream().map(StationRecord::view).toList();
    }

    private StationAnswer after(Runnable written, UUID id) {
        written.run();
        return answer(id);
    }

    private StationAnswer answer(UUID id) {
        return records.find(id).map(StationAnswers::of).orElseThrow();
    }
}
