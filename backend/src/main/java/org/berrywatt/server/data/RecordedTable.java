package org.berrywatt.server.data;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ClassPathResource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.PreparedStatementCreator;

/** A table of what people recorded: the query of its name, asked of the store as it stands. */
final class RecordedTable {

    private static final int ROWS_AT_ONCE = 500;

    private final String query;
    private final JdbcTemplate store;

    RecordedTable(String name, JdbcTemplate store) {
        this.query = text(name).replace(":day", "?");
        this.store = store;
    }

    List<Column> columns() {
        return requireNonNull(store.execute(query, (PreparedStatement asked) -> columns(asked.getMetaData())));
    }

    void write(UUID labDayId, Layout layout, Appendable out) {
        store.query(asked(query, labDayId), (ResultSet rows) -> {
            write(rows, layout, out);
            return true;
        });
    }

    long rows(UUID labDayId) {
        return requireNonNull(
                store.query(asked("select count(*) from (" + query + ") as t", labDayId), (ResultSet count) -> {
                    count.next();
                    return count.getLong(1);
                }));
    }

    private static PreparedStatementCreator asked(String query, UUID labDayId) {
        return connection -> {
            var question = connection.prepareStatement(query);
            for (int i = 1; i <= question.getParameterMetaData().getParameterCount(); i++) {
                question.setObject(i, labDayId);
            }
            question.setFetchSize(ROWS_AT_ONCE);
            return question;
        };
    }

    private static void write(ResultSet rows, Layout layout, Appendable out) throws SQLException {
        try {
            var columns = columns(rows.getMetaData());
            var csv = new Csv(columns, layout, out);
            while (rows.next()) {
                csv.row(cells(columns, rows));
            }
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    private static List<@Nullable String> cells(List<Column> columns, ResultSet row) throws SQLException {
        var cells = new ArrayList<@Nullable String>();
        for (Column column : columns) {
            cells.add(column.type().read(row, cells.size() + 1));
        }
        return cells;
    }

    private static List<Column> columns(ResultSetMetaData about) throws SQLException {
        var columns = new ArrayList<Column>();
        for (int i = 1; i <= about.getColumnCount(); i++) {
            columns.add(new Column(about.getColumnLabel(i), ColumnType.of(about.getColumnTypeName(i))));
        }
        return columns;
    }

    private static String text(String name) {
        try {
            return new ClassPathResource("tables/" + name + ".sql").getContentAsString(StandardCharsets.UTF_8);
        } catch (IOException missing) {
            throw new UncheckedIOException("a table's query is not on the class path: " + name, missing);
        }
    }
}
