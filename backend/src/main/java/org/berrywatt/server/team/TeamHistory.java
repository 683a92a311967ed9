package org.berrywatt.server.team;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps what a team was before each change, and who made it. */
@Component
class TeamHistory {

    private static final String KEEP = """
            insert into team_edit (team_id, name, code, merged_into, written_by, written_at)
            select id, name, code, merged_into, ?, ? from team where id = ?
            """;

    private final JdbcClient database;

    TeamHistory(JdbcClient database) {
        this.database = database;
    }

    /** Copies the team as stored, before it changes. */
    void keep(UUID teamId, String writtenBy, Instant writtenAt) {
        database.sql(KEEP)
                .params(writtenBy, writtenAt.atOffset(ZoneOffset.UTC), teamId)
                .update();
    }
}
