package org.berrywatt.server.lesson;

import org.berrywatt.server.team.TeamMerged;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Timers and phones follow their team when it is joined to another, in the same transaction; heaters hold its cells. */
@Component
class LessonMoves {

    private final JdbcClient database;

    LessonMoves(JdbcClient database) {
        this.database = database;
    }

    @EventListener
    void on(TeamMerged merger) {
        move("update class_timer set team_id = ? where team_id = ?", merger);
        move("update phone set team_id = ? where team_id = ?", merger);
    }

    private void move(String statement, TeamMerged merger) {
        database.sql(statement).params(merger.into(), merger.teamId()).update();
    }
}
