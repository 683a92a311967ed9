package org.berrywatt.server.lesson;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.HeaterOutRequest;
import org.berrywatt.contract.HeaterSlotAnswer;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Which cell stays on which position of which heater. */
@Service
class HeaterSlots {

    private final Cells cells;
    private final HeaterSlotRepository slots;
    private final HeaterWriting writing;
    private final Receipts receipts;

    HeaterSlots(Cells cells, HeaterSlotRepository slots, HeaterWriting writing, Receipts receipts) {
        this.cells = cells;
        this.slots = slots;
        this.writing = writing;
        this.receipts = receipts;
    }

    /**
     * Puts a cell on a heater, or corrects such an entry; for the cell's team and for teachers.
     *
     * @throws Refusal {@code labday.closed}, {@code zone.notSignedOff} unless the team was signed off for the heat when the
     *     cell was put on ({@code zone.reasonNeeded} for a teacher), {@code heater.taken} unless that was a while ago, {@code heater.cellOn}, {@code
     *     replaced.already}, {@code lesson.full}, or when a field is refused
     */
    @Transactional
    public HeaterSlotAnswer put(UUID id, HeaterSlotRequest request, Caller caller, Instant at) {
        var cell = cells.requireOwn(Given.need("cellId", request.cellId()), caller);
        return receipts.once(
                id,
                request,
                () -> SlotAnswers.of(writing.putIn(id, request, cell, caller, at), cell),
                () -> SlotAnswers.of(slots.findById(id).orElseThrow(), cell));
    }

    /** Takes a cell off its heater, also while the day is closed. The first time out holds. */
    @Transactional
    public HeaterSlotAnswer takeOut(UUID id, HeaterOutRequest request, Caller caller, Instant at) {
        caller.requireSomebody();
        var cellId = slots.cellOf(Given.need("slotId", request.slotId()))
                .orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND).field("slotId"));
        var cell = cells.requireOwn(cellId, caller);
        return receipts.once(
                id,
                request,
                () -> SlotAnswers.of(writing.takeOut(cell, request, at), cell),
                () -> SlotAnswers.of(writing.standing(request.slotId()), cell));
    }

    /** Every standing stay of a day in the order put in; where hot things lie is no secret among the day's teams. */
    List<HeaterSlotAnswer> list(UUID labDayId, List<Cell> known) {
        return slots.standing(labDayId).stream()
                .flatMap(slot -> known.stream()
                        .filter(cell -> cell.id().equals(slot.cellId()))
                        .map(cell -> SlotAnswers.of(slot, cell)))
                .toList();
    }
}
