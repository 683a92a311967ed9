package org.berrywatt.server;

import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Copies of a day with its team, cells and readings, written straight into the database, many at once. */
record StoredDays(JdbcClient database, UUID template) {

    private static final String CODES = """
            insert into join_code
            select kind || lpad(to_hex(k), 5, '0') from generate_series(:from, :to) k, unnest(array['y', 'z']) kind
            """;

    /** A row of a table anew for each copy: the same but for what names it and what it belongs to. */
    private static final String COPY = """
            insert into %s select copy.* from %s t, generate_series(:from, :to) k,
                lateral jsonb_populate_record(t, jsonb_build_object(%s)) copy
            where %s
            """;

    private static final String DAY = "md5('day' || k)::uuid";
    private static final String OF_CELLS = "t.cell_id in (select id from cell where lab_day_id = :day)";

    /** Copies numbered in [from, to]. */
    void add(int from, int to) {
        write(CODES, from, to);
        copy("lab_day", "'id', " + DAY + ", 'code', 'y' || lpad(to_hex(k), 5, '0')", "t.id = :day", from, to);
        copy(
                "team",
                of("id", "lab_day_id") + ", 'code', 'z' || lpad(to_hex(k), 5, '0')",
                "t.lab_day_id = :day",
                from,
                to);
        copy("cell", of("id", "team_id", "lab_day_id"), "t.lab_day_id = :day", from, to);
        copy("build_sheet", of("id", "cell_id"), OF_CELLS, from, to);
        copy("reading", of("id", "cell_id", "lab_day_id"), "t.lab_day_id = :day", from, to);
        copy("receipt", of("id"), "t.id in (select id from reading where lab_day_id = :day)", from, to);
        database.sql("analyze").update();
    }

    private static String of(String... columns) {
        return String.join(
                ", ",
                Stream.of(columns)
                        .map(name -> "'" + name + "', "
                                + (name.equals("lab_day_id") ? DAY : "md5(k || t." + name + "::text)::uuid"))
                        .toList());
    }

    private void copy(String table, String changes, String which, int from, int to) {
        write(COPY.formatted(table, table, changes, which), from, to);
    }

    private void write(String statement, int from, int to) {
        database.sql(statement)
                .param("from", from)
                .param("to", to)
                .param("day", template)
                .update();
    }
}
