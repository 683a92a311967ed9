package org.berrywatt.server.plan;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.berrywatt.contract.PlanAnswer;
import org.berrywatt.contract.PlanChangeRequest;
import org.berrywatt.contract.PlanRequest;
import org.berrywatt.contract.PlannedCellAnswer;
import org.berrywatt.contract.PlannedCellRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.databind.json.JsonMapper;

/** The plans of lab days. Every save is a new version; what was planned before stays on record. */
@Service
public class Plans {

    private final PlanVersionRepository versions;
    private final Dealing dealing;
    private final PlanAnswers answers;
    private final PlannedCells planned;
    private final LabDays days;
    private final Cells cells;
    private final Receipts receipts;
    private final EntityManager store;
    private final JsonMapper json;

    Plans(
            PlanVersionRepository versions,
            Dealing dealing,
            PlanAnswers answers,
            PlannedCells planned,
            LabDays days,
            Cells cells,
            Receipts receipts,
            EntityManager store,
            JsonMapper json) {
        this.versions = versions;
        this.dealing = dealing;
        this.answers = answers;
        this.planned = planned;
        this.days = days;
        this.cells = cells;
        this.receipts = receipts;
        this.store = store;
        this.json = json;
    }

    /** The plan of a day with what follows from it, for teachers; version 0 when there is none. */
    @Transactional(readOnly = true)
    PlanAnswer show(UUID labDayId, Caller caller) {
        caller.requireTeacher();
        if (days.find(labDayId).isEmpty()) {
            throw Refusal.of(ProblemCode.NOT_FOUND);
        }
        return present(labDayId);
    }

    /**
     * Deals recipes anew and saves them.
     *
     * @param seen the version that the planner saw, 0 for none
     * @throws Refusal {@code edited.meanwhile}, {@code plan...}, or when a setting is refused
     */
    @Transactional
    public PlanAnswer save(UUID id, UUID labDayId, PlanRequest request, long seen, Caller caller, Instant at) {
        caller.requireTeacher();
        return receipts.once(
                id,
                request,
                () -> {
                    // dealt before the day is held: a search takes its time, and benches must not wait for it
                    var dealt = dealing.deal(id, labDayId, request, caller);
                    return write(id, labDayId, seen, caller, at, before -> dealt);
                },
                () -> present(labDayId));
    }

    /**
     * Changes one cell by hand; the figures follow.
     *
     * @throws Refusal {@code edited.meanwhile}, {@code plan.missing}, {@code choice.unknown}
     */
    @Transactional
    public PlanAnswer change(UUID id, UUID labDayId, PlanChangeRequest request, long seen, Caller caller, Instant at) {
        caller.requireTeacher();
        return receipts.once(
                id,
                request,
                () -> write(
                        id,
                        labDayId,
                        seen,
                        caller,
                        at,
                        before -> dealing.change(
                                before.orElseThrow(() -> Refusal.of(ProblemCode.PLAN_MISSING)),
                                Given.need("label", request.label()),
                                Given.need("parameter", request.parameter()),
                                request.level())),
                () -> present(labDayId));
    }

    /** The planned cells of a day: all for a teacher, its own for a team. */
    @Transactional(readOnly = true)
    public List<PlannedCellAnswer> cells(UUID labDayId, Caller caller) {
        caller.requireLabDay(labDayId);
        return latest(labDayId).map(version -> planned(labDayId, read(version))).orElse(List.of()).stream()
                .filter(cell -> caller instanceof Caller.Teacher || own(cell, caller))
                .toList();
    }

    /**
     * Notes which planned cell a registered one is, or that it is none; for its team and for teachers. A recipe that differs
     * is no reason to refuse.
     *
     * @throws Refusal {@code plan.missing} when there is no such planned cell
     */
    @Transactional
    public PlannedCellRequest note(UUID id, PlannedCellRequest request, Caller caller, Instant at) {
        var cell = cells.identify(Given.need("cellId", request.cellId()), caller);
        return receipts.once(
                id,
                request,
                () -> {
                    requirePlanned(cell.labDayId(), request);
                    store.persist(new PlannedCellEntity(
                            id, cell.labDayId(), cell.id(), request.label(), caller.signature(), at));
                    return request;
                },
                () -> request);
    }

    private void requirePlanned(UUID labDayId, PlannedCellRequest request) {
        var label = request.label();
        var known = latest(labDayId)
                .map(version -> planned(labDayId, read(version)))
                .orElse(List.of());
        if (label != null && known.stream().noneMatch(cell -> cell.label().equals(label))) {
            throw Refusal.of(ProblemCode.PLAN_MISSING).field("label").value(label);
        }
    }

    private PlanAnswer write(
            UUID id,
            UUID labDayId,
            long seen,
            Caller caller,
            Instant at,
            Function<Optional<PlanContent>, PlanContent> change) {
        days.holdAlone(labDayId);
        var before = latest(labDayId);
        int number = before.map(PlanVersion::number).orElse(0);
        if (number != seen) {
            throw Refusal.of(ProblemCode.EDITED_MEANWHILE).value(seen).limit(number);
        }
        var content = json.writeValueAsString(change.apply(before.map(this::read)));
        store.persist(new PlanVersion(id, labDayId, number + 1, content, caller.signature(), at));
        return present(labDayId);
    }

    private PlanAnswer present(UUID labDayId) {
        return latest(labDayId)
                .map(version -> {
                    var content = read(version);
                    return answers.of(labDayId, version.number(), content, planned(labDayId, content));
                })
                .orElseGet(() -> PlanAnswers.none(labDayId));
    }

    private List<PlannedCellAnswer> planned(UUID labDayId, PlanContent content) {
        var settings = PlanSettings.of(content.settings(), cells);
        return planned.answers(labDayId, answers.planned(settings, content));
    }

    private Optional<PlanVersion> latest(UUID labDayId) {
        return versions.findFirstByLabDayIdOrderByNumberDesc(labDayId);
    }

    private PlanContent read(PlanVersion version) {
        return json.readValue(version.content(), PlanContent.class);
    }

    private static boolean own(PlannedCellAnswer cell, Caller caller) {
        var team = cell.teamId();
        return team != null && caller.speaksFor(team);
    }
}
