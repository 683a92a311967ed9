package org.berrywatt.server.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.berrywatt.server.archive.DayTable.quoted;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Predicate;
import javax.sql.DataSource;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Data that an earlier Berrywatt wrote: its schema, filled with a day, becomes the present one and loses nothing. */
@ServerTest
class UpgradeTest {

    private static final String NAME = "upgrade";
    private static final String SCHEMA = """
            select table_name || '.' || column_name || ' ' || data_type || ' ' || is_nullable || ' ' || coalesce(column_default, '')
            from information_schema.columns where table_schema = 'public'
            union all select conrelid::regclass || ' ' || conname || ' ' || pg_get_constraintdef(oid)
            from pg_constraint where connamespace = 'public'::regnamespace
            union all select indexdef from pg_indexes where schemaname = 'public'
            """;

    private final JsonMapper json = new JsonMapper();
    private final ApplicationContext server;
    private final JdbcClient present;
    private final SingleConnectionDataSource source;
    private final JdbcClient old;

    @TempDir
    private Path migrations;

    @Autowired
    UpgradeTest(ApplicationContext server, JdbcClient present, DataSource pool) throws SQLException {
        this.server = server;
        this.present = present;
        present.sql("create database " + NAME).update();
        var settings = pool.unwrap(HikariDataSource.class);
        source = new SingleConnectionDataSource(
                settings.getJdbcUrl().replaceFirst("/postgres(?=$|\\?)", "/" + NAME),
                settings.getUsername(),
                settings.getPassword(),
                true);
        old = JdbcClient.create(source);
    }

    @AfterEach
    void drop() {
        source.destroy();
        present.sql("drop database " + NAME).update();
    }

    /** Up to which number the earlier one had migrations: the first that held a class, and the one before devices could send. */
    @ParameterizedTest
    @ValueSource(ints = {60, 109})
    void keepsEveryRowOfADayAndEndsWithThePresentSchema(int last) throws Exception {
        migrate("filesystem:" + only(version -> version <= last && (last > 60 || version % 10 == 0 || version <= 2)));
        UUID day = rehearse();
        Map<DayTable, List<String>> written = write(day);

        migrate("classpath:db/migration");

        written.forEach((table, rows) ->
                assertThat(rows(old, table, day)).as(table.name()).isEqualTo(rows));
        assertThat(written.values().stream().mapToInt(List::size).sum()).isGreaterThan(6);
        assertThat(schema(old)).containsExactlyInAnyOrderElementsOf(schema(present));
    }

    private void migrate(String location) {
        Flyway.configure()
                .dataSource(source)
                .locations(location)
                .outOfOrder(true)
                .load()
                .migrate();
    }

    private Path only(Predicate<Integer> wanted) throws IOException {
        for (Resource file : new PathMatchingResourcePatternResolver().getResources("classpath:db/migration/*/*.sql")) {
            var name = String.valueOf(file.getFilename());
            if (wanted.test(Integer.parseInt(name.substring(1, name.indexOf('_'))))) {
                Files.write(migrations.resolve(name), file.getContentAsByteArray());
            }
        }
        return migrations;
    }

    private UUID rehearse() {
        var day = new Rehearsal(server);
        var team = day.team("Larch");
        var yard = day.sunnyStation("Yard");
        day.light(yard, "1000 W/m2");
        var cell = day.cell(team, "L1", "15 x 15 mm");
        day.dark(cell, "0 mV", "0 uA");
        day.lit(cell, yard, "400 mV", "900 uA");
        day.failure(day.cell(team, "L2", null), "film", "patchy");
        return day.labDayId;
    }

    /** Writes what the earlier schema has columns for. */
    private Map<DayTable, List<String>> write(UUID day) {
        old.sql("set session_replication_role = replica").update();
        present.sql("select code from lab_day where id = :day union select code from team where lab_day_id = :day")
                .param("day", day)
                .query(String.class)
                .list()
                .forEach(code ->
                        old.sql("insert into join_code values (?)").param(code).update());
        Map<DayTable, List<String>> written = new LinkedHashMap<>();
        for (DayTable table : DaySchema.of(old)) {
            var rows = rows(present, table, day);
            rows.forEach(row -> old.sql(table.insert()).param(row).update());
            written.put(table, rows(old, table, day));
            assertThat(written.get(table)).hasSameSizeAs(rows);
        }
        old.sql("set session_replication_role = origin").update();
        return written;
    }

    /** Of an earlier table what the present one still has; the first schema kept a station's name twice. */
    private List<String> rows(JdbcClient store, DayTable table, UUID day) {
        return store
                .sql("select to_jsonb(t)::text from (select * from " + quoted(table.name()) + " where " + table.rows()
                        + ") t")
                .param("day", day)
                .query(String.class)
                .list()
                .stream()
                .map(row -> kept(row, table))
                .sorted()
                .toList();
    }

    private String kept(String row, DayTable table) {
        Map<String, Object> values = new TreeMap<>(json.readValue(row, new TypeReference<Map<String, Object>>() {}));
        values.keySet().retainAll(table.columns());
        if (table.columns().contains("name_key")) {
            values.put("name_key", values.get("name"));
        }
        return json.writeValueAsString(values);
    }

    private static List<String> schema(JdbcClient store) {
        return store.sql(SCHEMA).query(String.class).list();
    }
}
