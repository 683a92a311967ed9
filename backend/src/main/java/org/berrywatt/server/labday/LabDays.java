package org.berrywatt.server.labday;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.EntryRequest;
import org.berrywatt.contract.LabDayAnswer;
import org.berrywatt.contract.LabDayRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Lab days: set up by teachers, open or closed for entries. */
@Service
public class LabDays {

    private final LabDayRepository days;
    private final LabDayHistory history;
    private final JoinCodes codes;
    private final Receipts receipts;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    LabDays(
            LabDayRepository days,
            LabDayHistory history,
            JoinCodes codes,
            Receipts receipts,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.days = days;
        this.history = history;
        this.codes = codes;
        this.receipts = receipts;
        this.store = store;
        this.events = events;
    }

    /**
     * Creates a day, open for entries.
     *
     * @throws Refusal when the caller is no teacher, a field is refused, or the id came before with another request
     */
    @Transactional
    public LabDayAnswer put(UUID id, LabDayRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        return receipts.once(
                id, request, () -> create(id, request, caller, at), () -> answer(existing(days.findById(id)), caller));
    }

    /**
     * Edits a day. An edit that changes nothing is answered as done, so that it may be sent twice.
     *
     * @param version the version that the editor saw
     * @throws Refusal {@code edited.meanwhile} when the day has another version by now
     */
    @Transactional
    public LabDayAnswer edit(UUID id, LabDayRequest request, long version, Caller caller, Instant at) {
        caller.requireTeacher();
        var settings = LabDayConverter.settings(request);
        var day = existing(days.holdAlone(id));
        if (!settings.equals(day.settings())) {
            requireVersion(day, version);
            day.change(settings);
            record(day, caller, at);
        }
        return answer(day, caller);
    }

    /** Opens or closes a day for entries; entries on their way are finished first. */
    @Transactional
    public LabDayAnswer setEntry(UUID id, EntryRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        var day = existing(days.holdAlone(id));
        if (day.entryOpen() != request.open()) {
            day.setEntryOpen(request.open());
            record(day, caller, at);
        }
        return answer(day, caller);
    }

    /** Every day, newest first; for teachers. */
    @Transactional(readOnly = true)
    public List<LabDayAnswer> list(Caller caller) {
        caller.requireTeacher();
        return days.newestFirst().stream().map(day -> answer(day, caller)).toList();
    }

    /** One day; for teachers and the teams of the day. */
    @Transactional(readOnly = true)
    public LabDayAnswer show(UUID id, Caller caller) {
        caller.requireLabDay(id);
        return answer(existing(days.findById(id)), caller);
    }

    /** The day of an id, or empty. */
    @Transactional(readOnly = true)
    public Optional<LabDay> find(UUID id) {
        return days.findById(id).map(LabDayEntity::view);
    }

    /** The id of the day whose join code was typed, or empty. */
    @Transactional(readOnly = true)
    public Optional<UUID> idOfCode(String typed) {
        return days.idOfCode(JoinCodes.read(typed));
    }

    /**
     * The day, kept open until the transaction ends.
     *
     * @throws Refusal {@code labday.closed} when it is closed for entries
     */
    @Transactional
    public LabDay holdOpen(UUID id) {
        return open(existing(days.hold(id)).view());
    }

    /** The day, kept open and to this transaction alone, so that what is counted or unique within it stays so. */
    @Transactional
    public LabDay holdOpenAlone(UUID id) {
        return open(holdAlone(id));
    }

    /** The day, kept to this transaction alone, open or closed. */
    @Transactional
    public LabDay holdAlone(UUID id) {
        return existing(days.holdAlone(id)).view();
    }

    private LabDayAnswer create(UUID id, LabDayRequest request, Caller caller, Instant at) {
        var day = new LabDayEntity(id, codes.reserve(), LabDayConverter.settings(request), at);
        store.persist(day);
        record(day, caller, at);
        return answer(day, caller);
    }

    private void record(LabDayEntity day, Caller caller, Instant at) {
        store.flush();
        history.keep(day.id(), caller.signature(), at);
        events.publishEvent(new LabDayChanged(day.id()));
    }

    private LabDayAnswer answer(LabDayEntity day, Caller caller) {
        return LabDayConverter.answer(day, caller instanceof Caller.Teacher);
    }

    private static void requireVersion(LabDayEntity day, long version) {
        if (day.version() != version) {
            throw Refusal.of(ProblemCode.EDITED_MEANWHILE).value(version).limit(day.version());
        }
    }

    private static LabDay open(LabDay day) {
        if (!day.entryOpen()) {
            throw Refusal.of(ProblemCode.LABDAY_CLOSED).value(day.title());
        }
        return day;
    }

    private static LabDayEntity existing(Optional<LabDayEntity> found) {
        return found.orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
    }
}
