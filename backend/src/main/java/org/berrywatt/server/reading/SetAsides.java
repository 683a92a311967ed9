package org.berrywatt.server.reading;

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

/** Readings that a teacher keeps out of every result, with a reason, until it is taken back. */
@Service
class SetAsides {

    private static final int LONGEST_REASON = 120;

    private final LabDays days;
    private final ReadingRepository readings;
    private final SetAsideRepository setAsides;
    private final Receipts receipts;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    SetAsides(
            LabDays days,
            ReadingRepository readings,
            SetAsideRepository setAsides,
            Receipts receipts,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.days = days;
        this.readings = readings;
        this.setAsides = setAsides;
        this.receipts = receipts;
        this.store = store;
        this.events = events;
    }

    /**
     * Sets a reading aside or takes that back; for teachers, also while the day is closed for entries.
     *
     * @throws Refusal {@code labday.final}, {@code notFound}, {@code replaced.already} for a reading that a correction
     *     has replaced, or when the reason is refused
     */
    @Transactional
    public SetAsideAnswer put(UUID id, SetAsideRequest request, Caller caller, Instant at) {
        var teacher = caller.requireTeacher();
        return receipts.once(id, request, () -> write(id, request, teacher, at), () -> answer(id));
    }

    private SetAsideAnswer write(UUID id, SetAsideRequest request, Caller.Teacher teacher, Instant at) {
        var reading = standing(Given.need("readingId", request.readingId()));
        days.holdCorrectable(reading.labDayId());
        var setAside = new SetAside(id, reading.id(), reason(request.reason()), teacher, at);
        store.persist(setAside);
        events.publishEvent(new ReadingSetAside(reading.labDayId(), reading.cellId(), reading.id()));
        return setAside.answer();
    }

    private ReadingEntity standing(UUID readingId) {
        var reading = readings.holdAlone(readingId)
                .orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND).field("readingId"));
        if (readings.replacementOf(readingId).isPresent()) {
            throw Refusal.of(ProblemCode.REPLACED_ALREADY).field("readingId");
        }
        return reading;
    }

    private SetAsideAnswer answer(UUID id) {
        return setAsides.findById(id).map(SetAside::answer).orElseThrow();
    }

    private static @Nullable String reason(@Nullable String typed) {
        return typed == null ? null : Words.line("reason", typed, LONGEST_REASON);
    }
}
