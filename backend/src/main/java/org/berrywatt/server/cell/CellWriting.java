package org.berrywatt.server.cell;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SheetRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.team.Team;
import org.berrywatt.server.team.Teams;
import org.berrywatt.server.typed.Corrections;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Origin;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

/** Writes cells, sheets and outcomes while the day is open, and a teacher's corrections until it is final. Nothing written is ever changed. */
@Component
class CellWriting {

    private static final int LONGEST_LABEL = 12;

    private final Teams teams;
    private final LabDays days;
    private final CellRepository cells;
    private final BuildSheetRepository sheets;
    private final StageOutcomeRepository outcomes;
    private final StageGate gate;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    CellWriting(
            Teams teams,
            LabDays days,
            CellRepository cells,
            BuildSheetRepository sheets,
            StageOutcomeRepository outcomes,
            StageGate gate,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.teams = teams;
        this.days = days;
        this.cells = cells;
        this.sheets = sheets;
        this.outcomes = outcomes;
        this.gate = gate;
        this.store = store;
        this.events = events;
    }

    void register(UUID id, CellRequest request, Caller caller, Instant at) {
        var day = days.holdOpenAlone(team(request).labDayId());
        var team = team(request); // again, since it may have been joined to another one before the day was held
        var label = Words.line("label", request.label(), LONGEST_LABEL);
        requireRoom(team, day);
        requireFree(label, day);
        var origin = Origin.of(caller.signature(), request.noticedAt(), at);
        var content = SheetConverter.content(request.recipe(), request.area());
        store.persist(new CellEntity(id, team.id(), day.id(), label, origin));
        store.persist(new BuildSheet(id, id, null, content, origin));
        events.publishEvent(new CellChanged(day.id(), id));
    }

    void correct(CellEntity cell, UUID sheetId, SheetRequest request, Caller caller, Instant at) {
        days.holdFor(cell.labDayId(), request.replaces(), caller);
        requireStanding(cell, request);
        var origin = Origin.of(caller.signature(), request.noticedAt(), at);
        var content = SheetConverter.content(request.recipe(), request.area());
        store.persist(new BuildSheet(sheetId, cell.id(), request.replaces(), content, origin));
        events.publishEvent(new CellChanged(cell.labDayId(), cell.id()));
    }

    void record(CellEntity cell, UUID id, OutcomeRequest request, Caller caller, Instant at) {
        days.holdFor(cell.labDayId(), request.replaces(), caller);
        requireStanding(cell, request.replaces());
        var origin = Origin.of(caller.signature(), request.noticedAt(), at);
        var end = StageEnds.of(request);
        gate.admit(cell, end, request.replaces(), origin, caller);
        store.persist(new StageOutcomeEntity(id, cell.id(), end, request.replaces(), origin));
        events.publishEvent(new CellChanged(cell.labDayId(), cell.id()));
    }

    private Team team(CellRequest request) {
        return teams.remaining(request.teamId())
                .orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND).field("teamId"));
    }

    /** A team that others were joined to has room for theirs, too. */
    private void requireRoom(Team team, LabDay day) {
        var most = day.cellsPerTeam() * teams.parts(team.id());
        if (cells.countByTeamId(team.id()) >= most) {
            throw Refusal.of(ProblemCode.CELLS_FULL).value(team.name()).limit(most);
        }
    }

    private void requireFree(String label, LabDay day) {
        if (cells.existsByLabDayIdAndLabelKey(day.id(), Words.key(label))) {
            throw Refusal.of(ProblemCode.LABEL_TAKEN).field("label").value(label);
        }
    }

    private void requireStanding(CellEntity cell, SheetRequest request) {
        var replaced = Given.need("replaces", request.replaces());
        Corrections.requireStanding(sheets.holdAlone(replaced, cell.id()), () -> sheets.existsByReplaces(replaced));
    }

    private void requireStanding(CellEntity cell, @Nullable UUID replaced) {
        if (replaced != null) {
            Corrections.requireStanding(
                    outcomes.holdAlone(replaced, cell.id()), () -> outcomes.existsByReplaces(replaced));
        }
    }
}
