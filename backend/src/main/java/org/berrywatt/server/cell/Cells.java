package org.berrywatt.server.cell;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.CellAnswer;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.OutcomeAnswer;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SheetRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.team.Teams;
import org.berrywatt.server.typed.Given;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Cells, what they are made of, and how each stage ended. */
@Service
public class Cells {

    private final Teams teams;
    private final CellRecords records;
    private final CellWriting writing;
    private final Receipts receipts;

    Cells(Teams teams, CellRecords records, CellWriting writing, Receipts receipts) {
        this.teams = teams;
        this.records = records;
        this.writing = writing;
        this.receipts = receipts;
    }

    /**
     * Registers a cell of the caller's own team, or of any team for a teacher. Its first build sheet has the cell's own
     * id. Where the team was joined to another one, it is that one's cell.
     *
     * @throws Refusal {@code labday.closed}, {@code cells.full}, {@code label.taken}, or when a field is refused
     */
    @Transactional
    public CellAnswer put(UUID id, CellRequest request, Caller caller, Instant at) {
        teams.requireOwn(Given.need("teamId", request.teamId()), caller);
        return receipts.once(
                id, request, () -> after(() -> writing.register(id, request, caller, at), id), () -> answer(id));
    }

    /**
     * Corrects or completes the build sheet of a cell; the earlier sheet is kept.
     *
     * @throws Refusal {@code labday.closed}, {@code replaced.already}, or when a field is refused
     */
    @Transactional
    public CellAnswer putSheet(UUID cellId, UUID sheetId, SheetRequest request, Caller caller, Instant at) {
        var cell = own(cellId, caller);
        return receipts.once(
                sheetId,
                new SheetOfCell(cellId, request),
                () -> after(() -> writing.correct(cell, sheetId, request, caller, at), cellId),
                () -> answer(cellId));
    }

    /**
     * Records how a stage ended, or corrects such a record.
     *
     * @throws Refusal {@code labday.closed}, {@code replaced.already}, {@code zone.notSignedOff} for a stage that is hot,
     *     burns or corrodes and was not signed off ({@code zone.reasonNeeded} for a teacher), or when a field is refused
     */
    @Transactional
    public OutcomeAnswer putOutcome(UUID id, OutcomeRequest request, Caller caller, Instant at) {
        var cell = own(Given.need("cellId", request.cellId()), caller);
        return receipts.once(
                id,
                request,
                () -> CellAnswers.outcome(after(() -> writing.record(cell, id, request, caller, at), cell.id()), id),
                () -> CellAnswers.outcome(answer(cell.id()), id));
    }

    /** The cells of a day in the order registered: all for a teacher, its own for a team. */
    @Transactional(readOnly = true)
    public List<CellAnswer> list(UUID labDayId, Caller caller) {
        caller.requireLabDay(labDayId);
        return records.ofLabDay(labDayId).stream()
                .filter(record -> caller.speaksFor(record.cell().teamId()))
                .map(CellAnswers::of)
                .toList();
    }

    /** One cell, for its team and for teachers. */
    @Transactional(readOnly = true)
    public CellAnswer show(UUID id, Caller caller) {
        own(id, caller);
        return answer(id);
    }

    /** The cell of an id, or empty. */
    @Transactional(readOnly = true)
    public Optional<Cell> find(UUID id) {
        return records.find(id).map(CellRecord::view);
    }

    /** The cells of a day in the order registered. */
    @Transactional(readOnly = true)
    public List<Cell> ofLabDay(UUID labDayId) {
        return records.ofLabDay(labDayId).stream().map(CellRecord::view).toList();
    }

    /**
     * The cell, for its team and for teachers.
     *
     * @throws Refusal {@code access.signInNeeded}, {@code access.notAllowed} or {@code notFound}
     */
    @Transactional(readOnly = true)
    public Cell requireOwn(UUID id, Caller caller) {
        own(id, caller);
        return records.find(id).map(CellRecord::view).orElseThrow();
    }

    /**
     * Whose cell it is and of which day, for its team and for teachers; not what it is made of.
     *
     * @throws Refusal {@code access.signInNeeded}, {@code access.notAllowed} or {@code notFound}
     */
    @Transactional(readOnly = true)
    public CellIdentity identify(UUID id, Caller caller) {
        return own(id, caller).identity();
    }

    /**
     * The same from memory where that admits the caller; before anybody is refused, the database is asked.
     *
     * @throws Refusal {@code access.signInNeeded}, {@code access.notAllowed} or {@code notFound}
     */
    @Transactional(readOnly = true)
    public CellIdentity recall(UUID id, Caller caller) {
        return records.recall(id)
                .filter(cell -> caller.speaksFor(cell.teamId()))
                .orElseGet(() -> remembered(identify(id, caller)));
    }

    private CellIdentity remembered(CellIdentity cell) {
        records.remember(cell);
        return cell;
    }

    /**
     * Reads one value of a recipe that is planned, as a build sheet's would be.
     *
     * @param path the field's path in the request
     * @throws Refusal when the catalogue does not know it, or the number is refused
     */
    public RecipeEntry understand(String path, BuildValue value) {
        return SheetConverter.value(path, value);
    }

    private CellEntity own(UUID id, Caller caller) {
        caller.requireSomebody();
        var cell = records.cell(id).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
        caller.requireTeam(cell.teamId());
        return cell;
    }

    private CellAnswer after(Runnable written, UUID id) {
        written.run();
        return answer(id);
    }

    private CellAnswer answer(UUID id) {
        return records.find(id).map(CellAnswers::of).orElseThrow();
    }

    /** A sheet's whole request: the cell stands in the address. */
    private record SheetOfCell(UUID cellId, SheetRequest sheet) {}
}
