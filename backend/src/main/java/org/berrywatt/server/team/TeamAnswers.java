package org.berrywatt.server.team;

import org.berrywatt.contract.TeamAnswer;

/** Teams as they travel. */
final class TeamAnswers {

    private TeamAnswers() {}

    static TeamAnswer of(TeamEntity team, boolean withCode) {
        var view = team.view();
        return new TeamAnswer(view.id(), view.labDayId(), view.name(), view.mark(), withCode ? team.code() : null);
    }
}
