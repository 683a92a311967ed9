package org.berrywatt.server.data;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Kinds of columns, by the names of the Table Schema specification of Frictionless Data. */
enum ColumnType {
    STRING,
    NUMBER,
    INTEGER,
    BOOLEAN,
    DATE,
    DATETIME;

    /** Digits after the point, or zeros before it, from which on a power of ten is easier to read. */
    private static final int LONGEST_PLAIN = 20;

    /** The kind of a column of PostgreSQL. */
    static ColumnType of(String sqlType) {
        return switch (sqlType) {
            case "float8", "numeric" -> NUMBER;
            case "int4", "int8" -> INTEGER;
            case "bool" -> BOOLEAN;
            case "date" -> DATE;
            case "timestamptz" -> DATETIME;
            default -> STRING;
        };
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The driver's own text depends on how often a question was asked: 100 at first, 100.0 later. */
    private static String number(BigDecimal value) {
        return Math.abs(value.scale()) > LONGEST_PLAIN ? value.toString() : value.toPlainString();
    }

    /** A cell as text: decimal points, ISO 8601 times in UTC; null when there is none. */
    @Nullable
    String read(ResultSet row, int column) throws SQLException {
        return switch (this) {
            case DATETIME -> {
                var time = row.getObject(column, OffsetDateTime.class);
                yield time == null ? null : time.toInstant().toString();
            }
            case BOOLEAN -> {
                boolean yes = row.getBoolean(column);
                yield row.wasNull() ? null : String.valueOf(yes);
            }
            case NUMBER -> {
                double value = row.getDouble(column);
                yield row.wasNull() ? null : number(BigDecimal.valueOf(value).stripTrailingZeros());
            }
            default -> row.getString(column);
        };
    }
}
