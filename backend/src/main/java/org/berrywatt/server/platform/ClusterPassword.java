package org.berrywatt.server.platform;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
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

    /** Trust for as long as it takes to set a new password, where the old one was lost. */
    private static final String OPEN = """
            # Berrywatt: a new password is being set.
            host all all 127.0.0.1/32 trust
            """;

    /** What a start that was killed before it set the password leaves behind. */
    private static final String AS_MADE = "# PostgreSQL Client Authentication Configuration File";

    static ClusterPassword in(Path file) throws IOException {
        if (!isKept(file)) {
            OwnerOnly.write(file, HexFormat.of().formatHex(random(24)));
        }
        return new ClusterPassword(Files.readString(file).strip());
    }

    /** A power cut or a damaged disk may leave a file of this name with nothing in it, or anything. */
    private static boolean isKept(Path file) throws IOException {
        return content(file).strip().matches("[0-9a-f]{48}");
    }

    /**
     * Makes rules of ours again of what a damaged disk left of them, and opens data whose password was lost. Both belong to
     * whoever owns the folder.
     */
    static void mend(Path file, Path data) throws IOException {
        if (!isKept(file)) {
            replaceRules(data, OPEN);
        } else if (!isSecured(data) && !rules(data).equals(OPEN)) {
            replaceRules(data, RULES);
        }
    }

    void secure(DataSource database, Path data) throws IOException, SQLException {
        if (isSecured(data)) {
            return;
        }
        run(database, "alter role postgres password '" + text + "'");
        replaceRules(data, RULES);
        run(database, "select pg_reload_conf()");
    }

    /** Whether a start was killed before these data had a password, and so before they held anything. */
    static boolean isUnfinished(Path data) throws IOException {
        var rules = rules(data);
        return rules.contains(AS_MADE) || (rules.isEmpty() && !Files.exists(data.resolve("global/pg_control")));
    }

    private static boolean isSecured(Path data) throws IOException {
        return rules(data).equals(RULES);
    }

    private static String rules(Path data) throws IOException {
        return content(data.resolve("pg_hba.conf"));
    }

    /** Whatever is in it. */
    private static String content(Path file) throws IOException {
        return Files.exists(file) ? Files.readString(file, StandardCharsets.ISO_8859_1) : "";
    }

    private static void replaceRules(Path data, String rules) throws IOException {
        var written = Files.writeString(data.resolve("pg_hba.conf.new"), rules);
        Files.move(
                written,
                data.resolve("pg_hba.conf"),
                StandardCopyOption.ATOMIC_MOVE,
                StandardCopyOption.REPLACE_EXISTING);
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
