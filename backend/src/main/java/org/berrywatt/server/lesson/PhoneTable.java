package org.berrywatt.server.lesson;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** One row per phone, and at most a dozen phones per team: the one not heard of for longest makes room. */
@Component
class PhoneTable {

    private static final int MOST_PER_TEAM = 12;
    private static final String KEEP = """
            insert into phone (id, team_id, waiting, refused_codes, seen_at)
            select :id, id, :waiting, :codes, :seenAt from team where id = :teamId
            on conflict (id) do update set team_id = excluded.team_id, waiting = excluded.waiting,
                refused_codes = excluded.refused_codes, seen_at = excluded.seen_at
            """;
    private static final String MAKE_ROOM = """
            delete from phone where team_id = :teamId and id not in
                (select id from phone where team_id = :teamId order by seen_at desc, id limit :most)
            """;
    private static final String OF_LAB_DAY = """
            select p.* from phone p join team t on t.id = p.team_id
            where t.lab_day_id = ? order by t.mark, p.seen_at desc, p.id
            """;

    private final JdbcClient database;

    PhoneTable(JdbcClient database) {
        this.database = database;
    }

    void keep(Phone phone) {
        database.sql(KEEP)
                .param("id", phone.id())
                .param("waiting", phone.waiting())
                .param("codes", String.join(",", phone.refusedCodes()))
                .param("seenAt", phone.seenAt().atOffset(ZoneOffset.UTC))
                .param("teamId", phone.teamId())
                .update();
        database.sql(MAKE_ROOM)
                .param("teamId", phone.teamId())
                .param("most", MOST_PER_TEAM)
                .update();
    }

    /** The codes that a phone told last; none when it is new. */
    List<String> refusedCodes(UUID id) {
        return database.sql("select refused_codes from phone where id = ?").param(id).query(String.class).stream()
                .findFirst()
                .map(PhoneTable::codes)
                .orElse(List.of());
    }

    List<Phone> ofLabDay(UUID labDayId) {
        return database.sql(OF_LAB_DAY).param(labDayId).query(PhoneTable::phone).list();
    }

    private static Phone phone(ResultSet row, int number) throws SQLException {
        return new Phone(
                row.getObject("id", UUID.class),
                row.getObject("team_id", UUID.class),
                row.getInt("waiting"),
                codes(row.getString("refused_codes")),
                row.getObject("seen_at", OffsetDateTime.class).toInstant());
    }

    private static List<String> codes(String joined) {
        return joined.isEmpty() ? List.of() : List.of(joined.split(","));
    }
}
