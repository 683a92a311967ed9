package org.berrywatt.server.platform;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;

/** The PostgreSQL that the server brings along: its data stay in the home folder, and every commit reaches the disk. */
final class Cluster implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private final EmbeddedPostgres postgres;
    private final ClusterPassword password;

    private Cluster(EmbeddedPostgres postgres, ClusterPassword password) {
        this.postgres = postgres;
        this.password = password;
    }

    /** Starts the database of a home, creating it the first time. */
    static Cluster start(BerrywattSettings settings) throws IOException, SQLException {
        var home = OwnerOnly.folder(settings.home());
        var data = home.resolve("database").toAbsolutePath();
        var password = ClusterPassword.in(home);
        var cluster = new Cluster(builder(settings, data, password).start(), password);
        password.secure(cluster.postgres.getPostgresDatabase(), data);
        return cluster;
    }

    private static EmbeddedPostgres.Builder builder(BerrywattSettings settings, Path data, ClusterPassword password)
            throws IOException {
        return EmbeddedPostgres.builder()
                .setDataDirectory(data)
                .setCleanDataDirectory(false)
                .setOverrideWorkingDirectory(programs(settings).toFile())
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

    private static Path programs(BerrywattSettings settings) throws IOException {
        var chosen = settings.binaries();
        return Files.createDirectories(chosen != null ? chosen : settings.home().resolve("programs"))
                .toAbsolutePath();
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
