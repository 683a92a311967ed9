package org.berrywatt.server.desk;

import static java.util.stream.Collectors.toMap;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What a teacher has put off, until when. */
@Component
class PutOffs {

    private static final String WRITE = """
            insert into desk_put_off (lab_day_id, item, until, written_by) values (?, ?, ?, ?)
            on conflict (lab_day_id, item) do update set until = excluded.until, written_by = excluded.written_by
            """;

    private final JdbcClient database;

    PutOffs(JdbcClient database) {
        this.database = database;
    }

    void write(UUID labDayId, String item, Instant until, String writtenBy) {
        database.sql(WRITE)
                .params(labDayId, item, until.atOffset(ZoneOffset.UTC), writtenBy)
                .update();
    }

    /** What is put off at an instant, by item. */
    Map<String, Instant> at(UUID labDayId, Instant now) {
        return database
                .sql("select item, until from desk_put_off where lab_day_id = ? and until > ?")
                .params(labDayId, now.atOffset(ZoneOffset.UTC))
                .query((row, number) -> Map.entry(
                        row.getString("item"), row.getTimestamp("until").toInstant()))
                .list()
                .stream()
                .collect(toMap(Map.Entry::getKey, Map.Entry::getValue));
    }
}
