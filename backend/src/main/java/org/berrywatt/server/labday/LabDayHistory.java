package org.berrywatt.server.labday;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
import org.berrywatt.server.access.Caller;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
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

    private final EntityManager store;
    private final ApplicationEventPublisher events;

    LabDayHistory(JdbcClient database, EntityManager store, ApplicationEventPublisher events) {
        this.database = database;
        this.store = store;
        this.events = events;
    }

    /** Keeps a day that has just been changed, with the reason where one was asked for, and tells whom it concerns. */
    void record(LabDayEntity day, @Nullable String reason, Caller caller, Instant at) {
        store.flush();
        keep(day.id(), reason, caller.signature(), at);
        events.publishEvent(new LabDayChanged(day.id()));
    }

    /** Copies the day as stored at this moment of the transaction. */
    private void keep(UUID labDayId, @Nullable String reason, String writtenBy, Instant writtenAt) {
        database.sql(KEEP)
                .param(reason)
                .param(writtenBy)
                .param(writtenAt.atOffset(ZoneOffset.UTC))
                .param(labDayId)
                .update();
    }
}
