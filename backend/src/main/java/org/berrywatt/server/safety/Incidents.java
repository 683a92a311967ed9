package org.berrywatt.server.safety;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.IncidentAnswer;
import org.berrywatt.contract.IncidentRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Corrections;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Origin;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The log of incidents, for teachers alone. It takes entries also while the day is closed. */
@Service
public class Incidents {

    private final IncidentRepository incidents;
    private final IncidentConverter converter;
    private final Receipts receipts;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    Incidents(
            IncidentRepository incidents,
            IncidentConverter converter,
            Receipts receipts,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.incidents = incidents;
        this.converter = converter;
        this.receipts = receipts;
        this.store = store;
        this.events = events;
    }

    /**
     * Writes an incident down, or corrects one; what is corrected is kept.
     *
     * @throws Refusal {@code replaced.already}, or when a field is refused
     */
    @Transactional
    public IncidentAnswer put(UUID id, IncidentRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        return receipts.once(
                id,
                request,
                () -> write(id, request, caller, at),
                () -> again(id, Given.need("labDayId", request.labDayId())));
    }

    /** The incidents of a day, oldest first, corrected ones among them. */
    @Transactional(readOnly = true)
    public List<IncidentAnswer> list(UUID labDayId, Caller caller) {
        caller.requireTeacher();
        return answers(labDayId);
    }

    /** Notes that a teacher has looked at it, so that it waits no more; the first look holds. */
    @Transactional
    public IncidentAnswer look(UUID id, Caller caller, Instant at) {
        var by = caller.requireTeacher();
        var incident = incidents.holdAlone(id).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
        if (incident.lookedAt() == null) {
            incident.look(by.signature(), at);
            events.publishEvent(new SafetyChanged(incident.labDayId()));
        }
        return again(id, incident.labDayId());
    }

    private IncidentAnswer write(UUID id, IncidentRequest request, Caller caller, Instant at) {
        var entry = converter.entry(request);
        requireStanding(entry);
        store.persist(new Incident(id, entry, Origin.of(caller.signature(), request.noticedAt(), at)));
        events.publishEvent(new SafetyChanged(entry.labDayId()));
        return again(id, entry.labDayId());
    }

    private IncidentAnswer again(UUID id, UUID labDayId) {
        return answers(labDayId).stream()
                .filter(answer -> answer.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private void requireStanding(IncidentEntry entry) {
        var replaced = entry.replaces();
        if (replaced != null) {
            Corrections.requireStanding(
                    incidents.holdAlone(replaced, entry.labDayId()), () -> incidents.existsByReplaces(replaced));
        }
    }

    private List<IncidentAnswer> answers(UUID labDayId) {
        return new IncidentLog(incidents.findByLabDayIdOrderByOriginAcceptedAtAscIdAsc(labDayId)).answers();
    }
}
