package org.berrywatt.server.lesson;

import jakarta.persistence.EntityManager;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.HeaterOutRequest;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Corrections;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

/** Writes stays on heaters. The day is held alone meanwhile, so that no position and no cell is taken twice. */
@Component
class HeaterWriting {

    private static final Duration LONGEST_AGO = Duration.ofHours(8);
    private static final long MOST_OF_A_CELL = 40;

    private final LabDays days;
    private final Cells cells;
    private final HeaterSlotRepository slots;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    HeaterWriting(
            LabDays days,
            Cells cells,
            HeaterSlotRepository slots,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.days = days;
        this.cells = cells;
        this.slots = slots;
        this.store = store;
        this.events = events;
    }

    HeaterSlotEntity putIn(UUID id, HeaterSlotRequest request, Cell cell, Caller caller, Instant at) {
        days.holdOpenAlone(cell.labDayId());
        Bounds.require(slots.countByCellId(cell.id()), MOST_OF_A_CELL);
        var replaced = replaced(request.replaces(), cell);
        var stay = SlotConverter.stay(request, replaced, at.minus(LONGEST_AGO), at);
        if (stay.outAt() == null) {
            requireFree(stay, cell, request.replaces());
        }
        var slot = new HeaterSlotEntity(id, cell.labDayId(), stay, request.replaces(), caller.signature(), at);
        store.persist(slot);
        return changed(slot);
    }

    HeaterSlotEntity takeOut(HeaterSlotEntity slot, HeaterOutRequest request, Instant at) {
        var view = slot.view();
        Corrections.requireStanding(Optional.of(slot), () -> slots.existsByReplaces(view.id()));
        if (view.outAt() != null) {
            return slot;
        }
        slot.takeOut(SlotConverter.held(request.outAt(), view.inAt(), at));
        return changed(slot);
    }

    private @Nullable HeaterSlot replaced(@Nullable UUID id, Cell cell) {
        if (id == null) {
            return null;
        }
        var found = slots.holdAlone(id).filter(slot -> slot.cellId().equals(cell.id()));
        Corrections.requireStanding(found, () -> slots.existsByReplaces(id));
        return found.orElseThrow().view();
    }

    private void requireFree(Stay stay, Cell cell, @Nullable UUID replaces) {
        for (var other : slots.occupied(cell.labDayId())) {
            var view = other.view();
            if (view.id().equals(replaces)) {
                continue;
            }
            if (view.cellId().equals(cell.id())) {
                throw refusal(ProblemCode.HEATER_CELL_ON, view).value(cell.label());
            }
            if (other.isAt(stay.heater(), stay.position())) {
                throw refusal(ProblemCode.HEATER_TAKEN, view).value(labelOf(view));
            }
        }
    }

    private static Refusal refusal(ProblemCode code, HeaterSlot there) {
        return Refusal.of(code).field("position").with("heater", there.heater()).with("position", there.position());
    }

    private String labelOf(HeaterSlot slot) {
        return cells.find(slot.cellId()).map(Cell::label).orElse("");
    }

    private HeaterSlotEntity changed(HeaterSlotEntity slot) {
        events.publishEvent(new LessonChanged(slot.labDayId()));
        return slot;
    }
}
