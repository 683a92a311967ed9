package org.berrywatt.server.platform;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;

/** The PostgreSQL that the server brings along: its data stay in the home folder, and every commit reaches the disk. */
final class Cluster implements AutoCloseable {

    /** The major version of the programs in the library; data of another one cannot be opened. */
    static final String MAJOR = "18";

    /** Any port that is free. */
    static final int ANY_PORT = 0;

    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private final Home home;
    private final EmbeddedPostgres postgres;
    private final ClusterPassword password;

    private Cluster(Home home, EmbeddedPostgres postgres, ClusterPassword password) {
        this.home = home;
        this.postgres = postgres;
        this.password = password;
    }

    /**
     * Starts the database of a home, creating it the first time.
     *
     * @param log what the database's programs write from now on
     */
    static Cluster start(Home home, int port, DatabaseLog log) throws IOException, SQLException {
        setAsideUnfinished(home.database());
        mend(home);
        var password = ClusterPassword.in(home.password());
        var builder = builder(home, password);
        var postgres = PatientStart.of(port == ANY_PORT ? builder : builder.setPort(port), log);
        password.secure(postgres.getPostgresDatabase(), home.database());
        return new Cluster(home, postgres, password);
    }

    private static EmbeddedPostgres.Builder builder(Home home, ClusterPassword password) throws IOException {
        var log = Redirect.appendTo(home.databaseLog().toFile());
        return EmbeddedPostgres.builder()
                .setDataDirectory(home.database())
                .setCleanDataDirectory(false)
                .setOverrideWorkingDirectory(
                        Files.createDirectories(home.programs()).toFile())
                .setOutputRedirector(log)
                .setErrorRedirector(log)
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
                .setDataDirectoryCustomizer(
                        folder -> Postmaster.of(folder.toPath()).ifPresent(Postmaster::end));
    }

    /** A start that was killed before the password was set never held data; its remains would not start again. */
    private static void setAsideUnfinished(Path data) throws IOException {
        if (isThere(data) && ClusterPassword.isUnfinished(data)) {
            Postmaster.of(data).ifPresent(Postmaster::end);
            Files.move(data, data.resolveSibling("database.unfinished-" + System.nanoTime()));
        }
    }

    /** Small files that a power cut or a damaged disk may have emptied, and whose content is known. */
    private static void mend(Home home) throws IOException {
        if (isThere(home.database())) {
            Postmaster.forgetUnreadable(home.database());
            ClusterPassword.mend(home.password(), home.database());
        }
    }

    private static boolean isThere(Path data) {
        return Files.exists(data.resolve("PG_VERSION"));
    }

    /** Runs once when the database's process has ended, whoever ended it. */
    void whenEnded(Runnable then) {
        Postmaster.of(home.database()).ifPresent(postmaster -> postmaster.whenEnded(then));
    }

    int port() {
        return postgres.getPort();
    }

    String jdbcUrl() {
        return "jdbc:postgresql://127.0.0.1:" + port() + "/postgres";
    }

    String password() {
        return password.text();
    }

    @Override
    public void close() throws IOException {
        postgres.close();
    }
}
