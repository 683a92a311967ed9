package org.berrywatt.server.logger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.server.access.Caller;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Devices in the database; of a token only what cannot be turned back. */
@Component
class DeviceStore {

    private final JdbcClient database;

    DeviceStore(JdbcClient database) {
        this.database = database;
    }

    void add(Device device, String tokenHash) {
        database.sql(
                        "insert into logger (id, lab_day_id, team_id, station_id, name, token_hash, teacher_id, teacher_name,"
                                + " made_at) values (?, ?, ?, ?, ?, ?, ?, ?, ?)")
                .params(Arrays.asList(
                        device.id(),
                        device.labDayId(),
                        device.teamId(),
                        device.stationId(),
                        device.name(),
                        tokenHash,
                        device.teacher().id(),
                        device.teacher().name(),
                        at(device.madeAt())))
                .update();
    }

    /** Those of a day in the order made. */
    List<Device> ofLabDay(UUID labDayId) {
        return database.sql("select * from logger where lab_day_id = ? order by position")
                .param(labDayId)
                .query((row, number) -> device(row))
                .list();
    }

    Optional<Device> find(UUID id) {
        return database.sql("select * from logger where id = ?")
                .param(id)
                .query((row, number) -> device(row))
                .optional();
    }

    /** The one that a token stands for, unless it was revoked. */
    Optional<Device> ofToken(String tokenHash) {
        return database.sql("select * from logger where token_hash = ? and revoked_at is null")
                .param(tokenHash)
                .query((row, number) -> device(row))
                .optional();
    }

    void revoke(UUID id, Instant now) {
        database.sql("update logger set revoked_at = ? where id = ? and revoked_at is null")
                .params(at(now), id)
                .update();
    }

    void heard(UUID id, Instant now) {
        database.sql("update logger set last_at = ? where id = ?")
                .params(at(now), id)
                .update();
    }

    private static OffsetDateTime at(Instant moment) {
        return moment.atOffset(ZoneOffset.UTC);
    }

    private static Device device(ResultSet row) throws SQLException {
        return new Device(
                row.getObject("id", UUID.class),
                row.getObject("lab_day_id", UUID.class),
                row.getObject("team_id", UUID.class),
                row.getObject("station_id", UUID.class),
                row.getString("name"),
                new Caller.Teacher(row.getObject("teacher_id", UUID.class), row.getString("teacher_name")),
                row.getObject("made_at", OffsetDateTime.class).toInstant(),
                moment(row, "last_at"),
                moment(row, "revoked_at"));
    }

    private static @Nullable Instant moment(ResultSet row, String column) throws SQLException {
        var time = row.getObject(column, OffsetDateTime.class);
        return time == null ? null : time.toInstant();
    }
}
