package org.berrywatt.server.platform;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** The PostgreSQL that the server brings along: its data stay in the home folder, and every commit reaches the disk. */
final class Cluster implements AutoCloseable {

    /** The major version of the programs in the library; data of another one cannot be opened. */
    static final String MAJOR = "18";

    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private final EmbeddedPostgres postgres;
    private final ClusterPassword password;

    private Cluster(EmbeddedPostgres postgres, ClusterPassword password) {
        this.postgres = postgres;
        this.password = password;
    }

    /** Starts the database of a home, creating it the first time. */
    static Cluster start(Home home, @Nullable Path programs) throws IOException, SQLException {
        var password = ClusterPassword.in(home.password());
        setAsideUnfinished(home.database());
        var postgres = builder(home, programs == null ? home.programs() : programs, password)
                .start();
        password.secure(postgres.getPostgresDatabase(), home.database());
        return new Cluster(postgres, password);
    }

    private static EmbeddedPostgres.Builder builder(Home home, Path programs, ClusterPassword password)
            throws IOException {
        return EmbeddedPostgres.builder()
                .setDataDirectory(home.database())
                .setCleanDataDirectory(false)
                .setOverrideWorkingDirectory(
                        Files.createDirectories(programs).toAbsolutePath().toFile())
                .setRegisterShutdownHook(false)
                .setPGStartupWait(PATIENCE)
                .setLocaleConfig("locale", "C.UTF-8")
                .setConnectConfig("password", password.text())
                .setServerConfig("fsync", "on")
                .setServerConfig("synchronous_commit", "on")
                .setServerConfig("max_connections", "40")
                .setServerConfig("timezone", "UTC")
                .setServerConfig("password_encryption", "scram-sha-256")
                .setServerConfig("listen_addresses", "127.0.0.1")
                .setDataDirectoryCustomizer(folder -> LeftoverPostmaster.end(folder.toPath()));
    }

    /** A start that was killed before the password was set never held data; its remains would not start again. */
    private static void setAsideUnfinished(Path data) throws IOException {
        if (Files.exists(data.resolve("PG_VERSION")) && !ClusterPassword.isSecured(data)) {
            LeftoverPostmaster.end(data);
            Files.move(data, data.resolveSibling("database.unfinished-" + System.nanoTime()));
        }
    }

    String jdbcUrl() {
        return "jdbc:postgresql://127.0.0.1:" + postgres.getPort() + "/postgres";
    }

    String password() {
        return password.text();
    }

    @Override
    public void close() throws IOException {
        postgres.close();
    }
}
