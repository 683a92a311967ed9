package org.berrywatt.server.archive;

import static java.util.stream.Collectors.joining;

import java.util.List;

/**
 * A table with rows that belong to a lab day.
 *
 * @param rows condition that finds them, with the parameter {@code day}
 * @param columns all columns, in the table's order
 * @param numbered columns that the database numbers by itself
 * @param key columns of the primary key, in order
 */
record DayTable(String name, String rows, List<String> columns, List<String> numbered, List<String> key) {

    /** Columns that open a door; they stay on the server that gave them. */
    private static final String SECRET = "code";

    boolean hasSecret() {
        return columns.contains(SECRET);
    }

    /** One row a line, as JSON, in the order of the key. */
    String select() {
        return "select (to_jsonb(t) - '" + SECRET + "')::text from " + quoted(name) + " t where " + rows + " order by "
                + list(key);
    }

    /** Takes one row as {@link #select} wrote it. */
    String insert() {
        return "insert into " + quoted(name) + " overriding system value select * from jsonb_populate_record(null::"
                + quoted(name) + ", ?::jsonb)";
    }

    /** Moves all rows of this table to another schema, where the database numbers them anew in their order. */
    String moveTo(String schema) {
        var moved =
                columns.stream().filter(column -> !numbered.contains(column)).toList();
        return "insert into " + quoted(schema) + "." + quoted(name) + " (" + list(moved) + ") select " + list(moved)
                + " from " + quoted(name) + " order by " + list(numbered.isEmpty() ? key : numbered);
    }

    static String quoted(String name) {
        return '"' + name + '"';
    }

    private static String list(List<String> names) {
        return names.stream().map(DayTable::quoted).collect(joining(", "));
    }
}
