package org.berrywatt.server.archive;

import static org.berrywatt.server.archive.DayTable.quoted;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The way of a day into this server, inside one transaction. Its rows arrive in a schema of their own, made as their
 * server knew the tables, where the database checks them against each other; then the schema goes through the changes
 * that it has not seen; then the rows move over to the others. An old archive so takes the very way of an old database.
 */
final class Arrival {

    private static final int AT_ONCE = 200;

    /** A correction may come before what it corrects: such bonds are looked at when all rows are there. */
    private static final String LATER = """
            select format('alter table %s alter constraint %I deferrable initially deferred', conrelid::regclass, conname)
            from pg_constraint
            where contype = 'f' and conrelid = confrelid and connamespace = current_schema()::text::regnamespace
            """;

    private final JdbcTemplate store;
    private final Migrations migrations;
    private final JsonMapper json;
    private final Supplier<String> newCode;
    private final String home;
    private final String hall = "arrival_" + UUID.randomUUID().toString().replace("-", "");

    /** @param newCode reserves a join code, while the present schema is the server's own */
    Arrival(JdbcTemplate store, Migrations migrations, JsonMapper json, Supplier<String> newCode) {
        this.store = store;
        this.migrations = migrations;
        this.json = json;
        this.newCode = newCode;
        this.home = JdbcClient.create(store)
                .sql("select current_schema()")
                .query(String.class)
                .single();
    }

    /** @throws org.berrywatt.server.platform.Refusal {@code archive.altered} when its tables are not those of its time */
    void take(ArchiveFile archive) throws IOException {
        var known = new HashSet<>(archive.manifest().schema());
        var codes = codes(archive.manifest());
        store.execute("create schema " + quoted(hall));
        stepInto(hall);
        migrations.make(known, store);
        codes.forEach(code -> store.update("insert into join_code (code) values (?)", code));
        store.queryForList(LATER, String.class).forEach(store::execute);
        fill(archive, codes);
        store.execute("set constraints all immediate");
        migrations.makeTheRest(known, store);
        tables().forEach(table -> store.execute(table.moveTo(home)));
        stepInto(home);
        store.execute("drop schema " + quoted(hall) + " cascade");
    }

    private void fill(ArchiveFile archive, List<String> codes) throws IOException {
        var unused = new ArrayList<>(codes);
        var tables = tables();
        requireTheSame(tables, archive.manifest());
        for (DayTable table : tables) {
            var rows = new ArrayList<Object[]>();
            archive.rows(table.name(), row -> {
                rows.add(new Object[] {table.hasSecret() ? withCode(row, table, unused) : row});
                if (rows.size() == AT_ONCE) {
                    insert(table, rows);
                }
            });
            insert(table, rows);
        }
    }

    private void insert(DayTable table, List<Object[]> rows) {
        store.batchUpdate(table.insert(), rows);
        rows.clear();
    }

    private String withCode(String row, DayTable table, List<String> unused) {
        var values = json.readValue(row, ObjectNode.class);
        values.put("code", OPENED_BY_CODE.contains(table.name()) ? unused.remove(unused.size() - 1) : "");
        return values.toString();
    }

    private static final List<String> OPENED_BY_CODE = List.of(DaySchema.DAY, "team");

    private List<String> codes(Manifest manifest) {
        long needed = OPENED_BY_CODE.stream().mapToLong(manifest::rowsOf).sum();
        var codes = new ArrayList<String>();
        while (codes.size() < needed) {
            codes.add(newCode.get());
        }
        return codes;
    }

    private static void requireTheSame(List<DayTable> tables, Manifest manifest) {
        var expected = tables.stream().map(DayTable::name).collect(Collectors.toSet());
        manifest.tables().stream()
                .map(Manifest.Part::table)
                .filter(table -> !expected.remove(table))
                .findFirst()
                .or(() -> expected.stream().findFirst())
                .ifPresent(table -> {
                    throw ArchiveFile.altered(Manifest.Part.entry(table));
                });
    }

    private List<DayTable> tables() {
        return DaySchema.of(JdbcClient.create(store));
    }

    private void stepInto(String schema) {
        store.execute("set local search_path to " + quoted(schema));
    }
}
