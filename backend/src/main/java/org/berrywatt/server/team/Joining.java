package org.berrywatt.server.team;

import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.JoinAnswer;
import org.berrywatt.contract.JoinRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.labday.JoinCodes;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What a join code opens: a team's own code that team, a day's code the naming of a new one. */
@Component
class Joining {

    private final TeamRepository teams;
    private final LabDays days;

    Joining(TeamRepository teams, LabDays days) {
        this.teams = teams;
        this.days = days;
    }

    /**
     * Looks a code up.
     *
     * @throws Refusal {@code access.refused} when no day and no team has this code, {@code team.codeNeeded} for a day's
     *     code when its teams may not create themselves
     */
    @Transactional(readOnly = true)
    public JoinAnswer open(JoinRequest request) {
        var code = Given.need("code", request.code());
        return teams.findByCode(JoinCodes.read(code))
                .map(this::remaining)
                .map(TeamEntity::view)
                .map(this::ofTeam)
                .or(() -> days.idOfCode(code).flatMap(days::find).map(Joining::ofDay))
                .orElseThrow(() -> Refusal.of(ProblemCode.SIGN_IN_REFUSED));
    }

    /**
     * The day of a code.
     *
     * @throws Refusal {@code access.refused} when no day has this code
     */
    @Transactional(readOnly = true)
    public UUID requireDay(String code) {
        return days.idOfCode(code).orElseThrow(() -> Refusal.of(ProblemCode.SIGN_IN_REFUSED));
    }

    private TeamEntity remaining(TeamEntity team) {
        return Optional.ofNullable(team.mergedInto()).flatMap(teams::findById).orElse(team);
    }

    private JoinAnswer ofTeam(Team team) {
        var day = days.find(team.labDayId()).orElseThrow();
        return new JoinAnswer("team", day.id(), day.title(), team.id(), team.name());
    }

    private static JoinAnswer ofDay(LabDay day) {
        if (!day.teamsCreateThemselves()) {
            throw Refusal.of(ProblemCode.TEAM_CODE_NEEDED);
        }
        return new JoinAnswer("labDay", day.id(), day.title(), null, null);
    }
}
