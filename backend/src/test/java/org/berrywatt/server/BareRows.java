package org.berrywatt.server;

import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** Inserts again what the latest accepted reading left in the database, receipt and reading in one transaction. */
final class BareRows {

    private final JdbcClient database;
    private final TransactionTemplate transaction;
    private final String readingInsert;
    private final UUID pattern;

    BareRows(JdbcClient database, TransactionTemplate transaction) {
        this.database = database;
        this.transaction = transaction;
        this.pattern = database.sql("select id from reading order by accepted_at desc limit 1")
                .query(UUID.class)
                .single();
        String columns = database.sql("select string_agg(column_name, ', ') from information_schema.columns"
                        + " where table_name = 'reading' and column_name <> 'id'")
                .query(String.class)
                .single();
        this.readingInsert =
                "insert into reading (id, %s) select ?, %s from reading where id = ?".formatted(columns, columns);
    }

    void insert() {
        var id = UUID.randomUUID();
        transaction.executeWithoutResult(status -> {
            database.sql("insert into receipt select ?, fingerprint, at from receipt where id = ?")
                    .params(id, pattern)
                    .update();
            database.sql(readingInsert).params(id, pattern).update();
        });
    }
}
