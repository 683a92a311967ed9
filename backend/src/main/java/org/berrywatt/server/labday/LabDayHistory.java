package org.berrywatt.server.labday;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps what a lab day looked like after each change, and who made it. */
@Component
class LabDayHistory {

    private static final String KEEP = """
            insert into lab_day_edit
                (lab_day_id, version, title, held_on, reference_irradiance_wm2, reference_area_m2, rule,
                 cells_per_team, teams_create_themselves, entry_open, results_final, keep_until, reason, written_by, written_at)
            select id, version, title, held_on, reference_irradiance_wm2, reference_area_m2, rule,
                   cells_per_team, teams_create_themselves, entry_open, results_final, keep_until, ?, ?, ?
            from lab_day where id = ?
            """;

    private final JdbcClient database;

    LabDayHistory(JdbcClient database) {
        this.database = database;
    }

    /** Copies the day as stored at this moment of the transaction, with the reason where one was asked for. */
    void keep(UUID labDayId, @Nullable String reason, String writtenBy, Instant writtenAt) {
        database.sql(KEEP)
                .param(reason)
                .param(writtenBy)
                .param(writtenAt.atOffset(ZoneOffset.UTC))
                .param(labDayId)
                .update();
    }
}
