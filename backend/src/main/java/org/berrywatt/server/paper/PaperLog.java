package org.berrywatt.server.paper;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.paper.Entries.Made;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Which entries came from paper, by whom and when, and where each of them stood. */
@Component
class PaperLog {

    private static final int LONGEST_NAME = 120;

    private final JdbcTemplate store;

    PaperLog(JdbcTemplate store) {
        this.store = store;
    }

    /** Everything that came to a day from paper. */
    Set<UUID> entries(UUID labDayId) {
        return JdbcClient.create(store)
                .sql("select entry_id from paper_entry e join paper_import i on i.id = e.import_id"
                        + " where i.lab_day_id = ?")
                .param(labDayId)
                .query(UUID.class)
                .set();
    }

    void write(UUID labDayId, Map<UUID, Made> entries, Caller.Teacher teacher, Instant now) {
        if (entries.isEmpty()) {
            return;
        }
        var id = UUID.randomUUID();
        store.update(
                "insert into paper_import (id, lab_day_id, written_by, written_at) values (?, ?, ?, ?)",
                id,
                labDayId,
                teacher.signature(),
                now.atOffset(ZoneOffset.UTC));
        List<Object[]> rows = entries.entrySet().stream()
                .map(entry -> row(entry.getKey(), id, entry.getValue()))
                .toList();
        store.batchUpdate(
                "insert into paper_entry (entry_id, import_id, of_table, file_name, file_row) values (?, ?, ?, ?, ?)",
                rows);
    }

    private static Object[] row(UUID entry, UUID paperImport, Made made) {
        var file = made.row().file();
        var name = file.length() > LONGEST_NAME ? file.substring(0, LONGEST_NAME) : file;
        return new Object[] {
            entry, paperImport, made.table().key(), name, made.row().number()
        };
    }
}
