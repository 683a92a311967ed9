package org.berrywatt.server.safety;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SignOffAnswer;
import org.berrywatt.contract.SignOffRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Sign-offs of teams for hazard zones. They may be given and withdrawn whether the day is open for entries or not: safety
 * does not wait for the desk.
 */
@Service
public class Safety {

    private final SignOffRepository signOffs;
    private final Briefings briefings;
    private final Gate gate;
    private final Receipts receipts;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    Safety(
            SignOffRepository signOffs,
            Briefings briefings,
            Gate gate,
            Receipts receipts,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.signOffs = signOffs;
        this.briefings = briefings;
        this.gate = gate;
        this.receipts = receipts;
        this.store = store;
        this.events = events;
    }

    /**
     * Signs a team off for a zone; for teachers.
     *
     * @throws Refusal {@code zone.briefingOpen} when points are not ticked and no reason is given, or when a field is
     *     refused
     */
    @Transactional
    public SignOffAnswer putSignOff(UUID id, SignOffRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        return receipts.once(
                id,
                request,
                () -> sign(id, request, caller, at),
                () -> existing(id).answer());
    }

    /** Ends a sign-off before its time; for teachers. A second withdrawal changes nothing. */
    @Transactional
    public SignOffAnswer withdraw(UUID id, Caller caller, Instant at) {
        caller.requireTeacher();
        var signOff = signOffs.holdAlone(id).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
        if (!signOff.isWithdrawn()) {
            signOff.withdraw(caller.signature(), at);
            events.publishEvent(new SafetyChanged(signOff.labDayId()));
        }
        return signOff.answer();
    }

    /** The sign-offs of a day, oldest first: all for a teacher, its own for a team. */
    @Transactional(readOnly = true)
    public List<SignOffAnswer> list(UUID labDayId, Caller caller) {
        caller.requireLabDay(labDayId);
        return signOffs.findByLabDayIdOrderBySignedAtAscIdAsc(labDayId).stream()
                .filter(signOff -> caller.speaksFor(signOff.teamId()))
                .map(SignOff::answer)
                .toList();
    }

    /**
     * Lets work pass that was done under a valid sign-off, or that a teacher enters with a reason.
     *
     * @throws Refusal {@code zone.notSignedOff} for a team, {@code zone.reasonNeeded} for a teacher
     */
    @Transactional(readOnly = true)
    public void requireSignedOff(HazardousWork work, Caller caller) {
        gate.requireSignedOff(work, caller);
    }

    private SignOffAnswer sign(UUID id, SignOffRequest request, Caller caller, Instant at) {
        var signOff = new SignOff(id, briefings.read(request), caller.signature(), at);
        store.persist(signOff);
        events.publishEvent(new SafetyChanged(signOff.labDayId()));
        return signOff.answer();
    }

    private SignOff existing(UUID id) {
        return signOffs.findById(id).orElseThrow();
    }
}
