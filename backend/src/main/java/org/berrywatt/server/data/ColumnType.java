package org.berrywatt.server.data;

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
            default -> row.getString(column);
        };
    }
}
