package org.berrywatt.server.cell;

import static java.util.stream.Collectors.groupingBy;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** Gathers what was written about cells: four queries, however many cells. */
@Component
class CellRecords {

    private static final int MOST_CELLS_KNOWN = 50_000;

    private final CellRepository cells;
    private final BuildSheetRepository sheets;
    private final StageOutcomeRepository outcomes;
    private final CellEventRepository events;
    private final Cache<UUID, CellIdentity> known =
            Caffeine.newBuilder().maximumSize(MOST_CELLS_KNOWN).build();

    CellRecords(
            CellRepository cells,
            BuildSheetRepository sheets,
            StageOutcomeRepository outcomes,
            CellEventRepository events) {
        this.cells = cells;
        this.sheets = sheets;
        this.outcomes = outcomes;
        this.events = events;
    }

    /** The cell alone. */
    Optional<CellEntity> cell(UUID id) {
        return cells.findById(id);
    }

    /**
     * Whose cell it was when last asked for, so that a reading need not ask. Its day never changes; its team does when
     * that is joined to another, and from then on nobody speaks for the former one.
     */
    Optional<CellIdentity> recall(UUID id) {
        return Optional.ofNullable(known.getIfPresent(id));
    }

    void remember(CellIdentity cell) {
        known.put(cell.id(), cell);
    }

    /** A cell with its sheets, outcomes and events. */
    Optional<CellRecord> find(UUID id) {
        return cells.findById(id).map(List::of).map(this::gather).map(found -> found.get(0));
    }

    /** In the order registered. */
    List<CellRecord> ofLabDay(UUID labDayId) {
        return gather(cells.findByLabDayIdOrderByOriginAcceptedAtAscIdAsc(labDayId));
    }

    private List<CellRecord> gather(List<CellEntity> found) {
        var ids = found.stream().map(CellEntity::id).toList();
        var sheetsOf = sheets.findByCellIdIn(ids).stream().collect(groupingBy(BuildSheet::cellId));
        var outcomesOf = outcomes.findByCellIdInOrderByOriginAcceptedAtAscIdAsc(ids).stream()
                .collect(groupingBy(StageOutcomeEntity::cellId));
        var eventsOf = events.findByCellIdInOrderByOriginAcceptedAtAscIdAsc(ids).stream()
                .collect(groupingBy(CellEventEntity::cellId));
        return found.stream()
                .map(cell -> new CellRecord(
                        cell,
                        sheetsOf.getOrDefault(cell.id(), List.of()),
                        outcomesOf.getOrDefault(cell.id(), List.of()),
                        eventsOf.getOrDefault(cell.id(), List.of())))
                .toList();
    }
}
