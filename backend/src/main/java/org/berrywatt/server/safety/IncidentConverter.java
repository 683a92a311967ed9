package org.berrywatt.server.safety;

import java.util.UUID;
import org.berrywatt.contract.IncidentRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.team.Team;
import org.berrywatt.server.team.Teams;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Reads incidents: the day must be there, and the team one of the day's. */
@Component
class IncidentConverter {

    private static final int SHORTEST = 3;
    private static final int LONGEST = 500;

    private final LabDays days;
    private final Teams teams;

    IncidentConverter(LabDays days, Teams teams) {
        this.days = days;
        this.teams = teams;
    }

    IncidentEntry entry(IncidentRequest request) {
        var labDayId = Given.need("labDayId", request.labDayId());
        requireDay(labDayId);
        requireTeamOf(labDayId, request.teamId());
        return new IncidentEntry(
                labDayId,
                request.teamId(),
                zone(request.zone()),
                Words.sentence("happened", request.happened(), SHORTEST, LONGEST),
                Words.sentence("done", request.done(), SHORTEST, LONGEST),
                request.replaces());
    }

    private void requireDay(UUID labDayId) {
        if (days.find(labDayId).isEmpty()) {
            throw Refusal.of(ProblemCode.NOT_FOUND).field("labDayId");
        }
    }

    private void requireTeamOf(UUID labDayId, @Nullable UUID teamId) {
        if (teamId != null
                && teams.find(teamId)
                        .map(Team::labDayId)
                        .filter(labDayId::equals)
                        .isEmpty()) {
            throw Refusal.of(ProblemCode.NOT_FOUND).field("teamId");
        }
    }

    private static @Nullable String zone(@Nullable String key) {
        return key == null ? null : Briefings.zone("zone", key).key();
    }
}
