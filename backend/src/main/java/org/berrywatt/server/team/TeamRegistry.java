package org.berrywatt.server.team;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.TeamRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.labday.JoinCodes;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

/** Enters a new team, names and marks being unique within the day. */
@Component
class TeamRegistry {

    static final int LONGEST_NAME = 24;
    private static final int SHORTEST_CLAIM = 16;

    private final Joining joining;
    private final TeamAnswers answers;
    private final TeamRepository teams;
    private final LabDays days;
    private final JoinCodes codes;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    TeamRegistry(
            Joining joining,
            TeamAnswers answers,
            TeamRepository teams,
            LabDays days,
            JoinCodes codes,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.joining = joining;
        this.answers = answers;
        this.teams = teams;
        this.days = days;
        this.codes = codes;
        this.store = store;
        this.events = events;
    }

    /** Checks who asks for which day, and the name. */
    TeamApplication application(TeamRequest request, Caller caller) {
        var code = request.code();
        var labDayId = code == null ? dayOfTeacher(request, caller) : joining.requireDay(code);
        var claim = request.claim();
        return new TeamApplication(
                labDayId,
                Words.line("name", request.name(), LONGEST_NAME),
                code != null,
                claim != null && claim.length() >= SHORTEST_CLAIM,
                caller.signature());
    }

    TeamAnswer create(UUID id, TeamApplication application, Instant at) {
        admit(application, days.holdAlone(application.labDayId()));
        var team =
                new Team(id, application.labDayId(), application.name(), teams.countByLabDayId(application.labDayId()));
        var entity = new TeamEntity(team, codes.reserve(), application.writtenBy(), at);
        store.persist(entity);
        events.publishEvent(new TeamChanged(team.labDayId(), id));
        return answers.of(entity, true);
    }

    private UUID dayOfTeacher(TeamRequest request, Caller caller) {
        caller.requireTeacher();
        return Given.need("labDayId", request.labDayId());
    }

    private void admit(TeamApplication application, LabDay day) {
        if (application.byPhone() && !day.teamsCreateThemselves()) {
            throw Refusal.of(ProblemCode.TEAM_CODE_NEEDED);
        }
        if (application.byPhone() && !day.entryOpen()) {
            throw Refusal.of(ProblemCode.LABDAY_CLOSED).value(day.title());
        }
        if (teams.existsByLabDayIdAndNameKey(day.id(), Words.key(application.name()))) {
            throw Refusal.of(ProblemCode.NAME_TAKEN).field("name").value(application.name());
        }
    }
}
