package org.berrywatt.server.archive;

import static org.berrywatt.server.archive.DayTable.quoted;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.labday.LabDayChanged;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Refusal;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Deletes lab days for good: every row of them, the passes of their phones, the receipts of their entries, their codes. */
@Service
class Removals {

    private final LabDays days;
    private final JdbcClient store;
    private final ApplicationEventPublisher events;

    Removals(LabDays days, JdbcClient store, ApplicationEventPublisher events) {
        this.days = days;
        this.store = store;
        this.events = events;
    }

    /**
     * Deletes a day.
     *
     * @param title the day's title, typed by the person who wants this
     * @throws Refusal {@code notFound}, {@code labday.titleNeeded} for another title
     */
    @Transactional
    public void remove(UUID labDayId, String title) {
        var day = days.holdAlone(labDayId);
        if (!day.title().strip().equals(title.strip())) {
            throw Refusal.of(ProblemCode.LABDAY_TITLE_NEEDED)
                    .field("title")
                    .value(title)
                    .limit(day.title());
        }
        List<DayTable> tables = DaySchema.of(store);
        List<String> codes = codes(tables, labDayId);
        tables.forEach(table -> deleteReceipts(table, labDayId));
        delete("delete from pass where lab_day_id = :day", labDayId);
        delete("delete from lab_day where id = :day", labDayId);
        codes.forEach(code ->
                store.sql("delete from join_code where code = ?").param(code).update());
        events.publishEvent(new LabDayChanged(labDayId));
    }

    private List<String> codes(List<DayTable> tables, UUID labDayId) {
        return tables.stream()
                .filter(DayTable::hasSecret)
                .flatMap(table -> store
                        .sql("select code from " + quoted(table.name()) + " where " + table.rows())
                        .param("day", labDayId)
                        .query(String.class)
                        .list()
                        .stream())
                .distinct()
                .toList();
    }

    private void deleteReceipts(DayTable table, UUID labDayId) {
        if (table.key().equals(List.of("id"))) {
            delete(
                    "delete from receipt where id::text in (select id::text from " + quoted(table.name()) + " where "
                            + table.rows() + ")",
                    labDayId);
        }
    }

    private void delete(String statement, UUID labDayId) {
        store.sql(statement).param("day", labDayId).update();
    }
}
