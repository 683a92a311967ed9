package org.berrywatt.server.lesson;

import org.berrywatt.contract.HeaterSlotAnswer;
import org.berrywatt.server.cell.Cell;

/** Stays on heaters as they travel. */
final class SlotAnswers {

    private SlotAnswers() {}

    static HeaterSlotAnswer of(HeaterSlotEntity entity, Cell cell) {
        var slot = entity.view();
        return new HeaterSlotAnswer(
                slot.id(),
                cell.id(),
                cell.teamId(),
                cell.label(),
                slot.heater(),
                slot.position(),
                entity.target().typed(),
                slot.targetDegC(),
                slot.holdMinutes(),
                slot.inAt(),
                slot.holdUntil(),
                slot.outAt(),
                slot.coolUntil());
    }
}
