package org.berrywatt.server.team;

import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.TeamCodeRequest;
import org.berrywatt.contract.TeamMergerRequest;
import org.berrywatt.contract.TeamNameRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.access.Passes;
import org.berrywatt.server.labday.JoinCodes;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What a teacher changes about a team after it was made; each change may be sent twice. */
@Service
class TeamEdits {

    private final TeamRepository teams;
    private final TeamHistory history;
    private final LabDays days;
    private final JoinCodes codes;
    private final Passes passes;
    private final Receipts receipts;
    private final ApplicationEventPublisher events;

    TeamEdits(
            TeamRepository teams,
            TeamHistory history,
            LabDays days,
            JoinCodes codes,
            Passes passes,
            Receipts receipts,
            ApplicationEventPublisher events) {
        this.teams = teams;
        this.history = history;
        this.days = days;
        this.codes = codes;
        this.passes = passes;
        this.receipts = receipts;
        this.events = events;
    }

    /**
     * Gives a team another name.
     *
     * @throws Refusal {@code name.taken}, {@code team.merged}, or when the name is refused
     */
    @Transactional
    public TeamAnswer rename(UUID id, TeamNameRequest request, Caller caller, Instant at) {
        var by = caller.requireTeacher();
        var name = Words.line("name", request.name(), TeamRegistry.LONGEST_NAME);
        var team = alone(id);
        if (!team.view().name().equals(name)) {
            requireFree(team, name);
            history.keep(id, by.signature(), at);
            team.rename(name);
            tellChange(team);
        }
        return TeamAnswers.of(team, true);
    }

    /**
     * Joins a team to another one of its day: cells and phones move, and its code opens the other team from now on. Results
     * follow, so it is refused once they are final.
     *
     * @return the team that remains
     * @throws Refusal {@code team.merged} when either was joined to another team, {@code labday.final}, {@code
     *     choice.unknown} for a team of another day or itself
     */
    @Transactional
    public TeamAnswer merge(UUID id, TeamMergerRequest request, Caller caller, Instant at) {
        var by = caller.requireTeacher();
        var intoId = Given.need("into", request.into());
        var team = existing(id);
        days.holdAlone(team.view().labDayId());
        if (!intoId.equals(team.mergedInto())) {
            join(requireSingle(team), requireFellow(team, intoId), by, at);
        }
        return TeamAnswers.of(existing(intoId), true);
    }

    /**
     * Gives a team a new code; the old one opens nothing any more.
     *
     * @throws Refusal {@code team.merged}
     */
    @Transactional
    public TeamAnswer renew(UUID id, TeamCodeRequest request, Caller caller, Instant at) {
        var by = caller.requireTeacher();
        var teamId = Given.need("teamId", request.teamId());
        return receipts.once(
                id,
                request,
                () -> renew(teamId, request.endPasses(), by, at),
                () -> TeamAnswers.of(existing(teamId), true));
    }

    private TeamAnswer renew(UUID teamId, boolean endPasses, Caller.Teacher by, Instant at) {
        var team = alone(teamId);
        history.keep(teamId, by.signature(), at);
        team.renew(codes.reserve());
        if (endPasses) {
            passes.endOfTeam(teamId);
        }
        tellChange(team);
        return TeamAnswers.of(team, true);
    }

    private void join(TeamEntity team, TeamEntity into, Caller.Teacher by, Instant at) {
        var id = team.view().id();
        var intoId = into.view().id();
        days.holdCorrectable(team.view().labDayId());
        history.keep(id, by.signature(), at);
        team.mergeInto(intoId);
        teams.forward(id, intoId);
        passes.moveTeam(id, intoId);
        events.publishEvent(new TeamMerged(team.view().labDayId(), id, intoId));
        tellChange(into);
    }

    private TeamEntity requireFellow(TeamEntity team, UUID intoId) {
        var into = requireSingle(existing(intoId));
        if (into.view().labDayId().equals(team.view().labDayId())
                && !intoId.equals(team.view().id())) {
            return into;
        }
        throw Refusal.of(ProblemCode.CHOICE_UNKNOWN).field("into").value(intoId).limit("another team of this day");
    }

    private void requireFree(TeamEntity team, String name) {
        var key = Words.key(name);
        var taken = teams.findByLabDayIdAndNameKey(team.view().labDayId(), key);
        if (taken.filter(other -> !other.view().id().equals(team.view().id())).isPresent()) {
            throw Refusal.of(ProblemCode.NAME_TAKEN).field("name").value(name);
        }
    }

    /** The team, its day's teams kept as they are by others until the transaction ends. */
    private TeamEntity alone(UUID id) {
        var team = existing(id);
        days.holdAlone(team.view().labDayId());
        return requireSingle(team);
    }

    private TeamEntity requireSingle(TeamEntity team) {
        if (team.mergedInto() != null) {
            throw Refusal.of(ProblemCode.TEAM_MERGED).value(team.view().name());
        }
        return team;
    }

    private TeamEntity existing(UUID id) {
        return teams.findById(id).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
    }

    private void tellChange(TeamEntity team) {
        events.publishEvent(new TeamChanged(team.view().labDayId(), team.view().id()));
    }
}
