package org.berrywatt.server.lesson;

import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Which places on the heaters of a day are free. */
@Component
class HeaterPlaces {

    /** Longer than a phone in the room's network takes (common practice, no source). */
    private static final Duration LATE = Duration.ofMinutes(1);

    private final Cells cells;
    private final HeaterSlotRepository slots;

    HeaterPlaces(Cells cells, HeaterSlotRepository slots) {
        this.cells = cells;
        this.slots = slots;
    }

    /**
     * Lets a cell be put where none lies, if it lies nowhere else. What a phone without a network tells late has happened:
     * it is kept also where another cell lies by now, and the teacher is told that two are said to lie there.
     *
     * @param replaces the entry that is corrected, which takes no place any more
     * @param at when the server was told
     * @throws Refusal {@code heater.cellOn} or {@code heater.taken}
     */
    void requireFree(Stay stay, Cell cell, @Nullable UUID replaces, Instant at) {
        var late = replaces == null && stay.inAt().isBefore(at.minus(LATE));
        for (var other : slots.occupied(cell.labDayId())) {
            var view = other.view();
            if (view.id().equals(replaces)) {
                continue;
            }
            if (view.cellId().equals(cell.id())) {
                throw refusal(ProblemCode.HEATER_CELL_ON, view).value(cell.label());
            }
            if (!late && other.isAt(stay.heater(), stay.position())) {
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
}
