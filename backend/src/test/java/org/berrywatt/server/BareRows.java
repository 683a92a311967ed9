package org.berrywatt.server;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;

/** Inserts again what accepted readings left in the database: for each its receipt and itself, in one transaction. */
final class BareRows {

    private static final String RECEIPT = "insert into receipt (id, fingerprint, at) values (?, ?, ?)";

    private final JdbcTemplate database;
    private final TransactionTemplate transaction;
    private final List<Map<String, Object>> receipts;
    private final List<Map<String, Object>> readings;
    private final String reading;

    /** @param rows how many of the latest readings to copy in turn */
    BareRows(JdbcTemplate database, TransactionTemplate transaction, int rows) {
        this.database = database;
        this.transaction = transaction;
        this.readings = database.queryForList("select * from reading order by accepted_at desc, id limit ?", rows);
        this.receipts = database.queryForList(
                "select receipt.* from reading join receipt using (id) order by accepted_at desc, reading.id limit ?",
                rows);
        var columns = readings.get(0).keySet();
        this.reading = "insert into reading (%s) values (%s)"
                .formatted(
                        String.join(", ", columns),
                        String.join(", ", columns.stream().map(each -> "?").toList()));
    }

    void insert(int number) {
        var id = UUID.randomUUID();
        var receipt = receipts.get(number % receipts.size());
        var values = values(id, readings.get(number % readings.size()));
        transaction.executeWithoutResult(status -> {
            database.update(RECEIPT, id, receipt.get("fingerprint"), receipt.get("at"));
            database.update(reading, values);
        });
    }

    private static Object[] values(UUID id, Map<String, Object> row) {
        return row.entrySet().stream()
                .map(each -> each.getKey().equals("id") ? id : each.getValue())
                .toArray();
    }
}
