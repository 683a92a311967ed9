package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The server beside somebody else's database. */
class ElsewhereIT {

    @Test
    void worksOnADatabaseThatTheSettingsName() throws Exception {
        var home = ServerProcess.newHome();
        try (var database = EmbeddedPostgres.builder()
                        .setOverrideWorkingDirectory(Path.of("target/database-programs")
                                .toAbsolutePath()
                                .toFile())
                        .start();
                var server = ServerProcess.start(
                                home,
                                "--spring.datasource.url=" + database.getJdbcUrl("postgres", "postgres"),
                                "--spring.datasource.username=postgres")
                        .ready()) {
            assertThat(server.get("/api/access").body()).contains("\"setupNeeded\":true");
            assertThat(tables(database)).contains("receipt", "teacher", "pass");
            assertThat(Files.exists(home)).as("a home of its own").isFalse();
        }
    }

    private static List<String> tables(EmbeddedPostgres database) {
        return JdbcClient.create(database.getPostgresDatabase())
                .sql("select tablename from pg_tables where schemaname = 'public'")
                .query(String.class)
                .list();
    }
}
