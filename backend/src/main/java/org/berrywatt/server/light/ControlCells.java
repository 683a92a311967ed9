package org.berrywatt.server.light;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.ControlCellRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The control cell of a lab day: one cell that is read at each station again and again. */
@Service
public class ControlCells {

    private final LabDays days;
    private final Cells cells;
    private final ControlCellRepository choices;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    ControlCells(
            LabDays days,
            Cells cells,
            ControlCellRepository choices,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.days = days;
        this.cells = cells;
        this.choices = choices;
        this.store = store;
        this.events = events;
    }

    /**
     * Chooses the control cell of a day, or none; for teachers, also while the day is closed. Choosing it again changes
     * nothing.
     *
     * @throws Refusal {@code notFound} when there is no such day, or no such cell in it, {@code labday.final}
     */
    @Transactional
    public void choose(UUID labDayId, ControlCellRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        requireChangeable(days.holdAlone(labDayId));
        requireOfDay(request.cellId(), labDayId);
        var latest = latest(labDayId);
        if (!Objects.equals(
                request.cellId(), latest.map(ControlCellEntity::cellId).orElse(null))) {
            int position = latest.map(ControlCellEntity::position).orElse(0) + 1;
            store.persist(new ControlCellEntity(labDayId, position, request.cellId(), caller.signature(), at));
            events.publishEvent(new ControlCellChosen(labDayId));
        }
    }

    /** The control cell of a day, or empty. */
    @Transactional(readOnly = true)
    public Optional<Cell> ofLabDay(UUID labDayId) {
        return latest(labDayId).map(ControlCellEntity::cellId).flatMap(cells::find);
    }

    private Optional<ControlCellEntity> latest(UUID labDayId) {
        return choices.findFirstByLabDayIdOrderByPositionDesc(labDayId);
    }

    /** A ranking may rest on it. */
    private static void requireChangeable(LabDay day) {
        if (day.resultsFinal()) {
            throw Refusal.of(ProblemCode.LABDAY_FINAL).value(day.title());
        }
    }

    private void requireOfDay(@Nullable UUID cellId, UUID labDayId) {
        if (cellId != null
                && cells.find(cellId)
                        .filter(cell -> cell.labDayId().equals(labDayId))
                        .isEmpty()) {
            throw Refusal.of(ProblemCode.NOT_FOUND).field("cellId");
        }
    }
}
