package org.berrywatt.demo;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** The rows of a generated file, read by column. */
record Rows(List<Row> rows) {

    static Rows of(String file) {
        Sheet sheet = DemoDay.sheets().stream()
                .filter(it -> it.file().equals(file + ".csv"))
                .findFirst()
                .orElseThrow();
        return new Rows(
                sheet.rows().stream().map(row -> new Row(sheet.columns(), row)).toList());
    }

    Stream<String> column(String name) {
        return rows.stream().map(row -> row.text(name));
    }

    Stream<Row> where(String column, String text) {
        return rows.stream().filter(row -> row.text(column).equals(text));
    }

    void each(Consumer<Row> check) {
        rows.forEach(check);
    }

    /** One row. */
    record Row(List<String> columns, List<Object> cells) {

        String text(String column) {
            return cells.get(columns.indexOf(column)).toString();
        }

        boolean has(String column) {
            return !text(column).isEmpty();
        }
    }
}
