package org.berrywatt.server.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Optional;

/**
 * A home's database at work, copied file by file while it goes on: what changes meanwhile is in its log of changes, which is
 * copied last and replayed at the next start (PostgreSQL manual, "Making a Base Backup Using the Low Level API").
 *
 * @param data the database's folder
 * @param port on the loopback address
 */
record RunningDatabase(Path data, int port, String password) {

    private static final int PORT_LINE = 3;

    /** The database of a home, unless it is at rest. */
    static Optional<RunningDatabase> of(Path home) throws IOException {
        var data = Home.database(home);
        if (Postmaster.of(data).isEmpty()) {
            return Optional.empty();
        }
        var port = Files.readAllLines(data.resolve("postmaster.pid")).get(PORT_LINE);
        var password = ClusterPassword.in(Home.password(home)).text();
        return Optional.of(new RunningDatabase(data, Integer.parseInt(port.strip()), password));
    }

    void copy(BackupWriter into) throws IOException, SQLException {
        try (var connection = DriverManager.getConnection(
                "jdbc:postgresql://127.0.0.1:" + port + "/postgres", "postgres", password)) {
            keepTheLogOfChanges(connection);
            var first = first(connection);
            into.tree(data, DatabaseFiles::isCopiedAtWork);
            var end = end(connection);
            into.text(BackupWriter.DATABASE + "backup_label", end.label());
            changes(into, first, end.lastSegment());
        }
    }

    /** For as long as this connection lasts. */
    private static void keepTheLogOfChanges(Connection connection) throws SQLException {
        ask(connection, "select slot_name from pg_create_physical_replication_slot('berrywatt_backup', true, true)");
    }

    /** The name of the first part of the log that a start from the copy needs. */
    private static String first(Connection connection) throws SQLException {
        return ask(connection, "select pg_walfile_name(pg_backup_start('berrywatt', true))");
    }

    private record End(String label, String lastSegment) {}

    private static End end(Connection connection) throws SQLException {
        try (var statement = connection.createStatement();
                var row = statement.executeQuery(
                        "select labelfile, pg_walfile_name(lsn) from pg_backup_stop(wait_for_archive => false)")) {
            row.next();
            return new End(row.getString(1), row.getString(2));
        }
    }

    private void changes(BackupWriter into, String first, String last) throws IOException {
        try (var log = Files.newDirectoryStream(data.resolve("pg_wal"), Files::isRegularFile)) {
            for (var part : log) {
                var name = part.getFileName().toString();
                if ((name.compareTo(first) >= 0 && name.compareTo(last) <= 0) || name.endsWith(".history")) {
                    into.file(BackupWriter.DATABASE + "pg_wal/" + name, part);
                }
            }
        }
    }

    private static String ask(Connection connection, String sql) throws SQLException {
        try (var statement = connection.createStatement();
                var row = statement.executeQuery(sql)) {
            row.next();
            return row.getString(1);
        }
    }
}
