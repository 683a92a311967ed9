package org.berrywatt.server.desk;

import java.util.Map;
import java.util.stream.Stream;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.lesson.HeatState;
import org.berrywatt.server.lesson.HeaterSlot;
import org.berrywatt.server.lesson.Phone;

/** Cells whose time on a heater is over or whose place is another's, and phones that hold what the server refused. */
final class LessonMatters {

    private LessonMatters() {}

    static Stream<Matter> of(DeskRecord record) {
        return Stream.of(takeOuts(record), HeaterConflicts.of(record), refusals(record))
                .flatMap(it -> it);
    }

    private static Stream<Matter> takeOuts(DeskRecord record) {
        return record.slots().stream()
                .filter(slot -> slot.state(record.now()) == HeatState.HOLD_OVER)
                .flatMap(slot -> record.cell(slot.cellId()).map(cell -> takeOut(slot, cell)).stream());
    }

    private static Stream<Matter> refusals(DeskRecord record) {
        return record.phones().stream()
                .filter(phone -> !phone.refusedCodes().isEmpty())
                .map(LessonMatters::refused);
    }

    private static Matter takeOut(HeaterSlot slot, Cell cell) {
        return new Matter(
                Kind.TAKE_OUT,
                slot.id(),
                cell.teamId(),
                cell.id(),
                null,
                slot.holdUntil(),
                Map.of("cell", cell.label(), "heater", slot.heater()),
                null);
    }

    private static Matter refused(Phone phone) {
        return new Matter(
                Kind.REFUSED,
                phone.id(),
                phone.teamId(),
                null,
                null,
                phone.seenAt(),
                Map.of("count", phone.refusedCodes().size()),
                null);
    }
}
