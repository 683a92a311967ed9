package org.berrywatt.server.labday;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.EntryRequest;
import org.berrywatt.contract.FinalRequest;
import org.berrywatt.contract.LabDayAnswer;
import org.berrywatt.contract.LabDayRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.RetentionRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Lab days: set up by teachers, open or closed for entries. */
@Service
public class LabDays {

    private static final int LONGEST_REASON = 120;

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
     * @throws Refusal {@code edited.meanwhile} when the day has another version by now, {@code labday.final}
     */
    @Transactional
    public LabDayAnswer edit(UUID id, LabDayRequest request, long version, Caller caller, Instant at) {
        caller.requireTeacher();
        var settings = LabDayConverter.settings(request);
        var day = existing(days.holdAlone(id));
        if (!settings.equals(day.settings())) {
            requireVersion(day, version);
            requireChangeable(day.view());
            day.change(settings);
            record(day, null, caller, at);
        }
        return answer(day, caller);
    }

    /**
     * Opens or closes a day for entries; entries on their way are finished first.
     *
     * @throws Refusal {@code labday.final} when its results are final, which must be taken back first
     */
    @Transactional
    public LabDayAnswer setEntry(UUID id, EntryRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        var day = existing(days.holdAlone(id));
        if (day.entryOpen() != request.open()) {
            requireChangeable(day.view());
            day.setEntryOpen(request.open());
            record(day, null, caller, at);
        }
        return answer(day, caller);
    }

    /**
     * Makes the results of a day final, which closes it for entries and for corrections, or takes that back with a reason.
     *
     * @throws Refusal {@code value.missing} or another for the reason of taking it back
     */
    @Transactional
    public LabDayAnswer setFinal(UUID id, FinalRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        var day = existing(days.holdAlone(id));
        if (day.resultsFinal() != request.resultsFinal()) {
            var reason = request.resultsFinal() ? null : Words.line("reason", request.reason(), LONGEST_REASON);
            day.setResultsFinal(request.resultsFinal());
            record(day, reason, caller, at);
        }
        return answer(day, caller);
    }

    /**
     * Says until when a day is to be kept, also once its results are final; nothing is deleted by itself.
     *
     * @throws Refusal {@code labday.keptTooShort} for a date before the day itself
     */
    @Transactional
    public LabDayAnswer keep(UUID id, RetentionRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        var day = existing(days.holdAlone(id));
        if (!Objects.equals(request.keepUntil(), day.keepUntil())) {
            requireNotBefore(day.settings().heldOn(), request.keepUntil());
            day.keepUntil(request.keepUntil());
            record(day, null, caller, at);
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
     * @throws Refusal {@code labday.closed} when it is closed for entries, {@code labday.final}
     */
    @Transactional
    public LabDay holdOpen(UUID id) {
        return open(existing(days.hold(id)).view());
    }

    /**
     * The day, kept open until the transaction ends; for a teacher's correction it may be closed, but not final.
     *
     * @param replaces the entry to correct, null for a new one
     * @throws Refusal {@code labday.closed} or {@code labday.final}
     */
    @Transactional
    public LabDay holdFor(UUID id, @Nullable UUID replaces, Caller caller) {
        return replaces != null && caller instanceof Caller.Teacher ? holdCorrectable(id) : holdOpen(id);
    }

    /**
     * The day, kept from becoming final until the transaction ends.
     *
     * @throws Refusal {@code labday.final}
     */
    @Transactional
    public LabDay holdCorrectable(UUID id) {
        return requireChangeable(existing(days.hold(id)).view());
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
        record(day, null, caller, at);
        return answer(day, caller);
    }

    private void record(LabDayEntity day, @Nullable String reason, Caller caller, Instant at) {
        store.flush();
        history.keep(day.id(), reason, caller.signature(), at);
        events.publishEvent(new LabDayChanged(day.id()));
    }

    private LabDayAnswer answer(LabDayEntity day, Caller caller) {
        return LabDayConverter.answer(day, caller instanceof Caller.Teacher);
    }

    private static void requireNotBefore(LocalDate heldOn, @Nullable LocalDate keepUntil) {
        if (keepUntil != null && keepUntil.isBefore(heldOn)) {
            throw Refusal.of(ProblemCode.LABDAY_KEPT_TOO_SHORT)
                    .field("keepUntil")
                    .value(keepUntil)
                    .limit(heldOn);
        }
    }

    private static void requireVersion(LabDayEntity day, long version) {
        if (day.version() != version) {
            throw Refusal.of(ProblemCode.EDITED_MEANWHILE).value(version).limit(day.version());
        }
    }

    private static LabDay requireChangeable(LabDay day) {
        if (day.resultsFinal()) {
            throw Refusal.of(ProblemCode.LABDAY_FINAL).value(day.title());
        }
        return day;
    }

    private static LabDay open(LabDay day) {
        requireChangeable(day);
        if (!day.entryOpen()) {
            throw Refusal.of(ProblemCode.LABDAY_CLOSED).value(day.title());
        }
        return day;
    }

    private static LabDayEntity existing(Optional<LabDayEntity> found) {
        return found.orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
    }
}
