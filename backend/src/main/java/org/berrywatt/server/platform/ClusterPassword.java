package org.berrywatt.server.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.SecureRandom;
import java.sql.SQLException;
import java.util.HexFormat;
import javax.sql.DataSource;

/**
 * The database's password: made on the first start, kept beside the data, readable by the owner alone.
 *
 * <p>A fresh cluster trusts everybody on this machine; {@link #secure} ends that before the first migration.
 */
record ClusterPassword(String text) {

    private static final String RULES = """
            # Berrywatt: nobody without the password.
            local all all scram-sha-256
            host all all 127.0.0.1/32 scram-sha-256
            host all all ::1/128 scram-sha-256
            """;

    static ClusterPassword in(Path file) throws IOException {
        if (!Files.exists(file)) {
            OwnerOnly.write(file, HexFormat.of().formatHex(random(24)));
        }
        return new ClusterPassword(Files.readString(file).strip());
    }

    void secure(DataSource database, Path data) throws IOException, SQLException {
        var rules = data.resolve("pg_hba.conf");
        if (isSecured(data)) {
            return;
        }
        run(database, "alter role postgres password '" + text + "'");
        var written = Files.writeString(data.resolve("pg_hba.conf.new"), RULES);
        Files.move(written, rules, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        run(database, "select pg_reload_conf()");
    }

    static boolean isSecured(Path data) throws IOException {
        var rules = data.resolve("pg_hba.conf");
        return Files.exists(rules) && Files.readString(rules).equals(RULES);
    }

    private static void run(DataSource database, String sql) throws SQLException {
        try (var connection = database.getConnection();
                var statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private static byte[] random(int length) {
        var bytes = new byte[length];
        new SecureRandom().nextBytes(bytes);
        return bytes;
    }
}
