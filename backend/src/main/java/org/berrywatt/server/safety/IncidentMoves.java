package org.berrywatt.server.safety;

import org.berrywatt.server.team.TeamMerged;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Incidents follow their team when it is joined to another. Sign-offs do not: newcomers were not briefed with the others. */
@Component
class IncidentMoves {

    private final JdbcClient database;

    IncidentMoves(JdbcClient database) {
        this.database = database;
    }

    @EventListener
    void on(TeamMerged merger) {
        database.sql("update incident set team_id = ? where team_id = ?")
                .params(merger.into(), merger.teamId())
                .update();
    }
}
