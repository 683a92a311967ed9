package org.berrywatt.server.access;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.SignedInBrowser;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Whose pass a token is: a teacher's or a team's, for a while. Only hashes of tokens are kept. In plain statements, since
 * every request asks once.
 */
@Component
class Holders {

    private static final String HOLDER = """
            select pass.team_id, pass.lab_day_id, teacher.id, teacher.name
            from pass left join teacher on teacher.id = pass.teacher_id
            where pass.token_hash = ? and pass.expires_at > ?
            """;
    private static final String ADD = """
            insert into pass (token_hash, teacher_id, team_id, lab_day_id, issued_at, expires_at, browser)
            values (?, ?, ?, ?, ?, ?, ?)
            """;
    private static final String BROWSERS = """
            select id, browser, issued_at, token_hash = ? as here
            from pass
            where teacher_id = ? and expires_at > ?
            order by here desc, issued_at desc, id
            """;

    private final JdbcClient database;

    Holders(JdbcClient database) {
        this.database = database;
    }

    /** Nobody when there is no such pass at this moment. */
    Caller of(Token token, Instant at) {
        return database.sql(HOLDER)
                .params(token.hash(), at.atOffset(ZoneOffset.UTC))
                .query(Holders::caller)
                .optional()
                .orElse(new Caller.Nobody());
    }

    /**
     * @param browser its name, kept of teachers alone
     * @throws IllegalArgumentException for nobody
     */
    void add(Token token, Caller holder, Instant from, Instant until, String browser) {
        if (holder instanceof Caller.Teacher teacher) {
            add(token, teacher.id(), null, null, from, until, browser);
        } else if (holder instanceof Caller.TeamMember member) {
            add(token, null, member.teamId(), member.labDayId(), from, until, "");
        } else {
            throw new IllegalArgumentException("nobody holds no pass");
        }
    }

    void remove(Token token) {
        update("delete from pass where token_hash = ?", token.hash());
    }

    void removeExpired(Instant now) {
        update("delete from pass where expires_at < ?", now.atOffset(ZoneOffset.UTC));
    }

    void removeTeam(UUID teamId) {
        update("delete from pass where team_id = ?", teamId);
    }

    void removeTeacher(UUID teacherId) {
        update("delete from pass where teacher_id = ?", teacherId);
    }

    void removeTeacherBut(String keptHash, UUID teacherId) {
        update("delete from pass where teacher_id = ? and token_hash <> ?", teacherId, keptHash);
    }

    void removeBrowser(UUID id, String keptHash, UUID teacherId) {
        update("delete from pass where id = ? and teacher_id = ? and token_hash <> ?", id, teacherId, keptHash);
    }

    /** Where a teacher is signed in: here first, then the latest. */
    List<SignedInBrowser> browsersOf(UUID teacherId, String hereHash, Instant at) {
        return database.sql(BROWSERS)
                .params(hereHash, teacherId, at.atOffset(ZoneOffset.UTC))
                .query((row, number) -> new SignedInBrowser(
                        row.getObject("id", UUID.class),
                        row.getString("browser"),
                        row.getObject("issued_at", OffsetDateTime.class).toInstant(),
                        row.getBoolean("here")))
                .list();
    }

    void moveTeam(UUID teamId, UUID into) {
        update("update pass set team_id = ? where team_id = ?", into, teamId);
    }

    private void add(
            Token token,
            @Nullable UUID teacherId,
            @Nullable UUID teamId,
            @Nullable UUID labDayId,
            Instant from,
            Instant until,
            String browser) {
        update(
                ADD,
                token.hash(),
                teacherId,
                teamId,
                labDayId,
                from.atOffset(ZoneOffset.UTC),
                until.atOffset(ZoneOffset.UTC),
                browser);
    }

    private void update(String statement, @Nullable Object... values) {
        database.sql(statement).params(values).update();
    }

    private static Caller caller(ResultSet row, int number) throws SQLException {
        var teacherId = row.getObject(3, UUID.class);
        return teacherId == null
                ? new Caller.TeamMember(row.getObject(1, UUID.class), row.getObject(2, UUID.class))
                : new Caller.Teacher(teacherId, row.getString(4));
    }
}
