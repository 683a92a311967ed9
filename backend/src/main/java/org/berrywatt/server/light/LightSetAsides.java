package org.berrywatt.server.light;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SetAsideAnswer;
import org.berrywatt.contract.SetAsideRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Light readings that mislead, kept out of every result by a teacher until that is taken back. Can be asked about before. */
@Service
public class LightSetAsides {

    private final StationRecords records;
    private final LightSetAsideRepository setAsides;
    private final LightReadingRepository readings;
    private final LabDays days;
    private final Receipts receipts;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    LightSetAsides(
            StationRecords records,
            LightSetAsideRepository setAsides,
            LightReadingRepository readings,
            LabDays days,
            Receipts receipts,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.records = records;
        this.setAsides = setAsides;
        this.readings = readings;
        this.days = days;
        this.receipts = receipts;
        this.store = store;
        this.events = events;
    }

    /**
     * Sets a light reading aside or takes that back; also while the day is closed.
     *
     * @throws Refusal {@code notFound}, {@code labday.final}, {@code replaced.already}, or when the reason is refused
     */
    @Transactional
    public SetAsideAnswer put(UUID id, SetAsideRequest request, Caller caller, Instant at) {
        var teacher = caller.requireTeacher();
        return receipts.once(
                id,
                request,
                () -> write(id, request, teacher, at),
                () -> setAsides.findById(id).orElseThrow().answer());
    }

    /** The station as it would be with the reading set aside, or taken back where there is no reason; nothing is written. */
    @Transactional(readOnly = true)
    public Station ifPut(SetAsideRequest request, Caller caller, Instant at) {
        var teacher = caller.requireTeacher();
        var record = standing(request.readingId());
        return record.with(new LightSetAside(UUID.randomUUID(), request.readingId(), request.reason(), teacher, at))
                .view();
    }

    private SetAsideAnswer write(UUID id, SetAsideRequest request, Caller.Teacher teacher, Instant at) {
        var readingId = Given.need("readingId", request.readingId());
        readings.holdAlone(readingId);
        var station = standing(readingId).station();
        days.holdCorrectable(station.labDayId());
        var setAside = new LightSetAside(id, readingId, reason(request.reason()), teacher, at);
        store.persist(setAside);
        events.publishEvent(new LightChanged(station.labDayId(), station.id()));
        return setAside.answer();
    }

    private StationRecord standing(@Nullable UUID readingId) {
        var record = records.ofReading(Given.need("readingId", readingId))
                .orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND).field("readingId"));
        if (record.light().replacementOf(Given.need("readingId", readingId)) != null) {
            throw Refusal.of(ProblemCode.REPLACED_ALREADY).field("readingId");
        }
        return record;
    }

    private static @Nullable String reason(@Nullable String typed) {
        return typed == null ? null : Words.line("reason", typed, StationChanges.LONGEST_REASON);
    }
}
