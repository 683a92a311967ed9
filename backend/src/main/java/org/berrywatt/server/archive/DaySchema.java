package org.berrywatt.server.archive;

import static java.util.Objects.requireNonNull;
import static org.berrywatt.server.archive.DayTable.quoted;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * What belongs to a lab day, read off the present schema: a row belongs to a day when it is deleted with the day. So a
 * feature's new table is part of an archive as soon as it exists.
 */
final class DaySchema {

    static final String DAY = "lab_day";

    private static final String COLUMNS = """
            select column_name from information_schema.columns
            where table_schema = current_schema() and table_name = ? order by ordinal_position
            """;
    private static final String NUMBERED = """
            select column_name from information_schema.columns
            where table_schema = current_schema() and table_name = ? and is_identity = 'YES' order by ordinal_position
            """;
    private static final String KEY = """
            select col.attname from pg_constraint it
            join pg_class owner on owner.oid = it.conrelid
            cross join unnest(it.conkey) with ordinality as part (number, position)
            join pg_attribute col on col.attrelid = owner.oid and col.attnum = part.number
            where it.contype = 'p' and owner.relname = ? and it.connamespace = current_schema()::text::regnamespace
            order by part.position
            """;

    private final JdbcClient store;
    private final List<Bond> bonds;

    private DaySchema(JdbcClient store) {
        this.store = store;
        this.bonds = Bond.all(store);
    }

    /** The tables of a day; each after the ones that its rows refer to. */
    static List<DayTable> of(JdbcClient store) {
        return new DaySchema(store).tables();
    }

    private List<DayTable> tables() {
        Map<String, String> rows = rowsByTable();
        return inOrder(rows.keySet()).stream()
                .map(name -> table(name, requireNonNull(rows.get(name))))
                .toList();
    }

    private DayTable table(String name, String rows) {
        return new DayTable(name, rows, names(COLUMNS, name), names(NUMBERED, name), names(KEY, name));
    }

    /** Nearest ways first, so that a row is found by its own column of the day where it has one. */
    private Map<String, String> rowsByTable() {
        Map<String, String> rows = new LinkedHashMap<>(Map.of(DAY, "id = :day"));
        var open = new ArrayDeque<>(List.of(DAY));
        while (!open.isEmpty()) {
            String parent = open.remove();
            String itsRows = requireNonNull(rows.get(parent));
            bonds.stream()
                    .filter(bond -> bond.belongs() && bond.parent().equals(parent))
                    .filter(bond -> rows.putIfAbsent(bond.child(), within(bond, itsRows)) == null)
                    .forEach(bond -> open.add(bond.child()));
        }
        return rows;
    }

    private static String within(Bond bond, String rowsOfParent) {
        return bond.parent().equals(DAY)
                ? quoted(bond.childColumn()) + " = :day"
                : quoted(bond.childColumn()) + " in (select " + quoted(bond.parentColumn()) + " from "
                        + quoted(bond.parent()) + " where " + rowsOfParent + ")";
    }

    private List<String> inOrder(Iterable<String> names) {
        var waiting = new ArrayList<String>();
        names.forEach(waiting::add);
        var placed = new ArrayList<String>();
        while (!waiting.isEmpty()) {
            String next = waiting.stream()
                    .filter(name -> bonds.stream()
                            .noneMatch(bond -> bond.child().equals(name) && waiting.contains(bond.parent())))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("tables refer to each other in a ring: " + waiting));
            waiting.remove(next);
            placed.add(next);
        }
        return placed;
    }

    private List<String> names(String question, String table) {
        return store.sql(question).param(table).query(String.class).list();
    }
}
