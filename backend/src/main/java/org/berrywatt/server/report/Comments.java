package org.berrywatt.server.report;

import static java.util.stream.Collectors.toMap;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.berrywatt.contract.TeamCommentAnswer;
import org.berrywatt.contract.TeamCommentRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.team.Teams;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What teachers write to teams under their reports; the last word holds, earlier ones are kept. */
@Service
class Comments {

    private static final int LONGEST = 800;

    private static final String WRITE =
            "insert into team_comment (id, team_id, words, written_by, written_at) values (?, ?, ?, ?, ?)";

    private static final String LAST = """
            select c.team_id, c.words, c.written_by, c.written_at
            from team_comment c join team t on t.id = c.team_id
            where t.lab_day_id = ?
              and not exists (select from team_comment later
                              where later.team_id = c.team_id and later.position > c.position)
            """;

    private static final String ONE = "select team_id, words, written_by, written_at from team_comment where id = ?";

    private final Teams teams;
    private final Receipts receipts;
    private final JdbcClient database;

    Comments(Teams teams, Receipts receipts, JdbcClient database) {
        this.teams = teams;
        this.receipts = receipts;
        this.database = database;
    }

    /**
     * Writes a comment to a team, or takes it back with empty words; for teachers, also once results are final.
     *
     * @throws Refusal {@code notFound} for the team, {@code text.unfit}, {@code text.tooLong}
     */
    @Transactional
    public TeamCommentAnswer put(UUID id, TeamCommentRequest request, Caller caller, Instant at) {
        var teacher = caller.requireTeacher();
        var team = teams.requireOwn(Given.need("teamId", request.teamId()), caller);
        return receipts.once(id, request, () -> write(id, team.id(), words(request), teacher, at), () -> one(id));
    }

    /** The last word to each team of a day, where it is one. */
    Map<UUID, TeamCommentAnswer> ofLabDay(UUID labDayId) {
        return database.sql(LAST).param(labDayId).query(Comments::answer).list().stream()
                .filter(comment -> !comment.words().isEmpty())
                .collect(toMap(TeamCommentAnswer::teamId, Function.identity()));
    }

    private TeamCommentAnswer write(UUID id, UUID teamId, String words, Caller.Teacher teacher, Instant at) {
        database.sql(WRITE)
                .params(id, teamId, words, teacher.signature(), at.atOffset(ZoneOffset.UTC))
                .update();
        return one(id);
    }

    private TeamCommentAnswer one(UUID id) {
        return database.sql(ONE).param(id).query(Comments::answer).single();
    }

    private static String words(TeamCommentRequest request) {
        var typed = request.words();
        return typed == null || typed.isBlank() ? "" : Words.line("words", typed, LONGEST);
    }

    private static TeamCommentAnswer answer(ResultSet row, int number) throws SQLException {
        return new TeamCommentAnswer(
                row.getObject("team_id", UUID.class),
                row.getString("words"),
                row.getString("written_by"),
                row.getObject("written_at", OffsetDateTime.class).toInstant());
    }
}
