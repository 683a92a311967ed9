package org.berrywatt.server.desk;

import static java.util.stream.Collectors.groupingBy;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.lesson.HeaterSlot;
import org.berrywatt.server.typed.Words;

/**
 * Places on heaters where two cells are said to lie, since a phone without a network told of the first one late. One of the
 * two is hot elsewhere, or was taken off and nobody noted it.
 */
final class HeaterConflicts {

    private HeaterConflicts() {}

    private record Place(String heater, int position) {}

    static Stream<Matter> of(DeskRecord record) {
        return record.slots().stream()
                .filter(slot -> slot.outAt() == null)
                .collect(groupingBy(slot -> new Place(Words.key(slot.heater()), slot.position())))
                .values()
                .stream()
                .filter(there -> there.size() > 1)
                .map(there -> matter(there, record));
    }

    /** Since the later one was put on; named by it, so that a third one is another matter. */
    private static Matter matter(List<HeaterSlot> there, DeskRecord record) {
        List<HeaterSlot> inOrder = there.stream()
                .sorted(Comparator.comparing(HeaterSlot::inAt).thenComparing(HeaterSlot::id))
                .toList();
        HeaterSlot first = inOrder.get(0);
        HeaterSlot last = inOrder.get(inOrder.size() - 1);
        return new Matter(
                Kind.HEATER_TWICE,
                last.id(),
                null,
                null,
                null,
                last.inAt(),
                Map.of(
                        "cell", label(first.cellId(), record),
                        "other", label(last.cellId(), record),
                        "heater", last.heater(),
                        "position", last.position()),
                null);
    }

    private static String label(UUID cellId, DeskRecord record) {
        return record.cell(cellId).map(Cell::label).orElse("");
    }
}
