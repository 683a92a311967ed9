package org.berrywatt.server.cell;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.CellEventAnswer;
import org.berrywatt.contract.CellEventRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Origin;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Refills and repairs: a cell that was filled anew is the same cell, and says so. */
@Service
public class CellWork {

    private static final int LONGEST_NOTE = 200;
    private static final List<String> KINDS = List.of(CellEventEntity.REFILL, CellEventEntity.REPAIR);

    private final Cells cells;
    private final LabDays days;
    private final CellEventRepository recorded;
    private final Receipts receipts;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    CellWork(
            Cells cells,
            LabDays days,
            CellEventRepository recorded,
            Receipts receipts,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.cells = cells;
        this.days = days;
        this.recorded = recorded;
        this.receipts = receipts;
        this.store = store;
        this.events = events;
    }

    /**
     * Records what was done to a cell of the caller's own team, or of any team for a teacher.
     *
     * @throws Refusal {@code labday.closed}, {@code choice.unknown} for a strange kind, or when the note is refused
     */
    @Transactional
    public CellEventAnswer put(UUID id, CellEventRequest request, Caller caller, Instant at) {
        var cell = cells.identify(Given.need("cellId", request.cellId()), caller);
        return receipts.once(
                id,
                request,
                () -> write(id, cell, request, caller, at),
                () -> recorded.findById(id).orElseThrow().answer());
    }

    private CellEventAnswer write(UUID id, CellIdentity cell, CellEventRequest request, Caller caller, Instant at) {
        days.holdOpen(cell.labDayId());
        var kind = Given.choice("kind", request.kind(), KINDS);
        var origin = Origin.of(caller.signature(), request.noticedAt(), at);
        var entity = new CellEventEntity(id, cell.id(), kind, note(request.note()), origin);
        store.persist(entity);
        events.publishEvent(new CellChanged(cell.labDayId(), cell.id()));
        return entity.answer();
    }

    private static @Nullable String note(@Nullable String typed) {
        return typed == null || typed.isBlank() ? null : Words.line("note", typed, LONGEST_NOTE);
    }
}
