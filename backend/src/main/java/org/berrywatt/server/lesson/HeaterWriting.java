package org.berrywatt.server.lesson;

import jakarta.persistence.EntityManager;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.HeaterOutRequest;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.safety.HazardousWork;
import org.berrywatt.server.safety.Safety;
import org.berrywatt.server.typed.Corrections;
import org.berrywatt.server.typed.Origin;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

/**
 * Writes stays on heaters. The day is held alone meanwhile, so that no cell is on twice, and no position by
 * two who stand before it.
 */
@Component
class HeaterWriting {

    private static final Duration LONGEST_AGO = Duration.ofHours(8);
    private static final long MOST_OF_A_CELL = 40;

    private final LabDays days;
    private final Safety safety;
    private final HeaterSlotRepository slots;
    private final HeaterPlaces places;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    HeaterWriting(
            LabDays days,
            Safety safety,
            HeaterSlotRepository slots,
            HeaterPlaces places,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.days = days;
        this.safety = safety;
        this.slots = slots;
        this.places = places;
        this.store = store;
        this.events = events;
    }

    HeaterSlotEntity putIn(UUID id, HeaterSlotRequest request, Cell cell, Caller caller, Instant at) {
        days.holdOpenAlone(cell.labDayId());
        Bounds.require(slots.countByCellId(cell.id()), MOST_OF_A_CELL);
        var replaced = replaced(request.replaces(), cell);
        var stay = SlotConverter.stay(request, replaced, at.minus(LONGEST_AGO), at);
        if (replaced == null) {
            requireSignedOff(stay, cell, caller, at);
        }
        if (stay.outAt() == null) {
            places.requireFree(stay, cell, request.replaces(), at);
        }
        var slot = new HeaterSlotEntity(id, cell.labDayId(), stay, request.replaces(), caller.signature(), at);
        store.persist(slot);
        return changed(slot);
    }

    /** Ends what stands of a stay by now: a phone without a network may not know of a correction. */
    HeaterSlotEntity takeOut(Cell cell, HeaterOutRequest request, Instant at) {
        days.holdAlone(cell.labDayId());
        var slot = standing(request.slotId());
        var view = slot.view();
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

    /** The last correction of a stay, or the stay itself. */
    HeaterSlotEntity standing(UUID id) {
        return slots.findByReplaces(id)
                .map(later -> standing(later.view().id()))
                .orElseGet(() -> slots.findById(id).orElseThrow());
    }

    private void requireSignedOff(Stay stay, Cell cell, Caller caller, Instant at) {
        var origin = Origin.of(caller.signature(), stay.inAt(), at);
        safety.requireSignedOff(HazardousWork.heater(cell.teamId(), cell.levels(), origin, stay.note()), caller);
    }

    private HeaterSlotEntity changed(HeaterSlotEntity slot) {
        events.publishEvent(new LessonChanged(slot.labDayId()));
        return slot;
    }
}
