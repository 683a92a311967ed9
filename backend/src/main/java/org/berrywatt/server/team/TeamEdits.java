package org.berrywatt.server.team;

import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.TeamCodeRequest;
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
    private final TeamAnswers answers;
    private final TeamHistory history;
    private final LabDays days;
    private final JoinCodes codes;
    private final Passes passes;
    private final Receipts receipts;
    private final ApplicationEventPublisher events;

    TeamEdits(
            TeamRepository teams,
            TeamAnswers answers,
            TeamHistory history,
            LabDays days,
            JoinCodes codes,
            Passes passes,
            Receipts receipts,
            ApplicationEventPublisher events) {
        this.teams = teams;
        this.answers = answers;
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
        return answers.of(team, true);
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
                () -> answers.of(teams.existing(teamId), true));
    }

    private TeamAnswer renew(UUID teamId, boolean endPasses, Caller.Teacher by, Instant at) {
        var team = alone(teamId);
        history.keep(teamId, by.signature(), at);
        team.renew(codes.reserve());
        if (endPasses) {
            passes.endOfTeam(teamId);
        }
        tellChange(team);
        return answers.of(team, true);
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
        var team = teams.existing(id);
        days.holdAlone(team.view().labDayId());
        return team.requireSingle();
    }

    private void tellChange(TeamEntity team) {
        events.publishEvent(new TeamChanged(team.view().labDayId(), team.view().id()));
    }
}
