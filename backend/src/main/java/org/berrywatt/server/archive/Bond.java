package org.berrywatt.server.archive;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * A foreign key between two tables of the present schema.
 *
 * @param belongs whether every row of the child is deleted with its row of the parent
 */
record Bond(String child, String childColumn, String parent, String parentColumn, boolean belongs) {

    private static final String ALL = """
            select child.relname as child, own.attname as child_column, parent.relname as parent,
                   other.attname as parent_column, bond.confdeltype = 'c' and own.attnotnull as belongs
            from pg_constraint bond
            join pg_class child on child.oid = bond.conrelid
            join pg_class parent on parent.oid = bond.confrelid
            join pg_attribute own on own.attrelid = child.oid and own.attnum = bond.conkey[1]
            join pg_attribute other on other.attrelid = parent.oid and other.attnum = bond.confkey[1]
            where bond.contype = 'f' and child.oid <> parent.oid
              and bond.connamespace = current_schema()::text::regnamespace
            order by child.relname, own.attnum
            """;

    static List<Bond> all(JdbcClient store) {
        return store.sql(ALL).query((row, number) -> of(row)).list();
    }

    private static Bond of(ResultSet row) throws SQLException {
        return new Bond(
                row.getString("child"),
                row.getString("child_column"),
                row.getString("parent"),
                row.getString("parent_column"),
                row.getBoolean("belongs"));
    }
}
