package org.berrywatt.server.team;

import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.TeamMergerRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.access.Passes;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Joins a team to another one. Each feature moves what it keeps by team when it hears {@link TeamMerged}. */
@Service
class TeamMergers {

    private final TeamRepository teams;
    private final TeamAnswers answers;
    private final TeamHistory history;
    private final LabDays days;
    private final Passes passes;
    private final ApplicationEventPublisher events;

    TeamMergers(
            TeamRepository teams,
            TeamAnswers answers,
            TeamHistory history,
            LabDays days,
            Passes passes,
            ApplicationEventPublisher events) {
        this.teams = teams;
        this.answers = answers;
        this.history = history;
        this.days = days;
        this.passes = passes;
        this.events = events;
    }

    /**
     * Joins a team to another one of its day: all that is kept of it moves, and its code opens the other team from now on.
     * Results follow, so it is refused once they are final. Once more changes nothing.
     *
     * @return the team that remains
     * @throws Refusal {@code team.merged} when either was joined to another team, {@code labday.final}, {@code
     *     choice.unknown} for a team of another day or itself
     */
    @Transactional
    public TeamAnswer merge(UUID id, TeamMergerRequest request, Caller caller, Instant at) {
        var by = caller.requireTeacher();
        var intoId = Given.need("into", request.into());
        var team = teams.existing(id);
        days.holdAlone(team.view().labDayId());
        if (!intoId.equals(team.mergedInto())) {
            join(team.requireSingle(), requireFellow(team, intoId), by, at);
        }
        return answers.of(teams.existing(intoId), true);
    }

    private void join(TeamEntity team, TeamEntity into, Caller.Teacher by, Instant at) {
        var id = team.view().id();
        var intoId = into.view().id();
        days.holdCorrectable(team.view().labDayId());
        history.keep(id, by.signature(), at);
        team.mergeInto(intoId, at);
        teams.forward(id, intoId);
        passes.moveTeam(id, intoId);
        events.publishEvent(new TeamMerged(team.view().labDayId(), id, intoId));
        events.publishEvent(new TeamChanged(into.view().labDayId(), intoId));
    }

    private TeamEntity requireFellow(TeamEntity team, UUID intoId) {
        var into = teams.existing(intoId).requireSingle();
        if (into.view().labDayId().equals(team.view().labDayId())
                && !intoId.equals(team.view().id())) {
            return into;
        }
        throw Refusal.of(ProblemCode.CHOICE_UNKNOWN).field("into").value(intoId).limit("another team of this day");
    }
}
