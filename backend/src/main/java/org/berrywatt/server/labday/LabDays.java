package org.berrywatt.server.labday;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.LabDayAnswer;
import org.berrywatt.contract.LabDayRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Lab days: set up by teachers, found and held by what depends on them. */
@Service
public class LabDays {

    private final LabDayRepository days;
    private final LabDayHistory history;
    private final JoinCodes codes;
    private final Receipts receipts;
    private final EntityManager store;

    LabDays(LabDayRepository days, LabDayHistory history, JoinCodes codes, Receipts receipts, EntityManager store) {
        this.days = days;
        this.history = history;
        this.codes = codes;
        this.receipts = receipts;
        this.store = store;
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
        return existing(days.hold(id)).view().requireOpen();
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
        return existing(days.hold(id)).view().requireChangeable();
    }

    /** The day, kept open and to this transaction alone, so that what is counted or unique within it stays so. */
    @Transactional
    public LabDay holdOpenAlone(UUID id) {
        return holdAlone(id).requireOpen();
    }

    /** The day, kept to this transaction alone, open or closed. */
    @Transactional
    public LabDay holdAlone(UUID id) {
        return existing(days.holdAlone(id)).view();
    }

    private LabDayAnswer create(UUID id, LabDayRequest request, Caller caller, Instant at) {
        var day = new LabDayEntity(id, codes.reserve(), LabDayConverter.settings(request), at);
        store.persist(day);
        history.record(day, null, caller, at);
        return answer(day, caller);
    }

    private LabDayAnswer answer(LabDayEntity day, Caller caller) {
        return LabDayConverter.answer(day, caller instanceof Caller.Teacher);
    }

    private static LabDayEntity existing(Optional<LabDayEntity> found) {
        return found.orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
    }
}
