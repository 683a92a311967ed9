package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import org.berrywatt.server.ServerProcess;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.util.FileSystemUtils;

/** What becomes of a database whose files were damaged at rest, or that cannot start for a while. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ClusterStartTest {

    private static final String WORD = "acknowledged";
    private static final Duration PATIENCE = Duration.ofMinutes(1);
    private final Path home = ServerProcess.newHome();
    private final Path data = Home.database(home);
    private final Path control = data.resolve("global/pg_control");

    ClusterStartTest() throws IOException {}

    @BeforeAll
    void store() throws Exception {
        try (var start = start()) {
            ask(start.await(), "create table kept as select '" + WORD + "' word; select word from kept");
        }
    }

    @Test
    void opensDataWhoseSmallFilesAPowerCutEmptied() throws Exception {
        Files.writeString(Home.password(home), "");
        Files.writeString(data.resolve("pg_hba.conf"), "");
        Files.writeString(data.resolve("postmaster.pid"), "");
        assertKept();
        Files.writeString(data.resolve("pg_hba.conf"), "local all all scr");
        assertKept();
        assertThat(home.toFile().list()).as("data set aside").noneMatch(name -> name.contains("unfinished"));
    }

    @Test
    void saysThatDataAreDamagedAndLeavesThemAsTheyAre() throws Exception {
        var whole = Files.readAllBytes(control);
        Files.write(control, new byte[whole.length]);
        try (var start = start()) {
            assertThatThrownBy(start::await)
                    .isInstanceOfSatisfying(
                            StartProblem.class,
                            problem -> assertThat(problem.sentence(Texts.load()))
                                    .contains("The data in " + home + " are damaged", "--restore=FILE", "database.log")
                                    .doesNotContain("{"));
        }
        Files.write(control, whole);
        assertKept();
    }

    @Test
    void bringsADatabaseBackOnceWhatKeptItFromStartingIsMended() throws Exception {
        try (var start = start()) {
            var before = start.await();
            var away = Files.move(control, home.resolve("away"));
            var log = DatabaseLog.fromNow(home.resolve("database.log"));
            end(Postmaster.of(data).orElseThrow().process());
            await().atMost(PATIENCE).until(log::saysThatItGaveUp);

            Files.move(away, control, StandardCopyOption.REPLACE_EXISTING);

            await().atMost(PATIENCE)
                    .ignoreExceptions()
                    .until(() -> ask(before, "select word from kept").equals(WORD));
        }
    }

    @Test
    void beginsAnewWhereAStartWasKilledBeforeThereWereData() throws Exception {
        var young = ServerProcess.newHome();
        Files.writeString(Files.createDirectories(Home.database(young)).resolve("PG_VERSION"), "18\n");
        try (var start = ClusterStart.in(Home.open(young, programs()))) {
            assertThat(ask(start.await(), "select 'ready'")).isEqualTo("ready");
        }
        FileSystemUtils.deleteRecursively(young);
    }

    private void assertKept() throws Exception {
        try (var start = start()) {
            assertThat(ask(start.await(), "select word from kept")).isEqualTo(WORD);
        }
        assertThat(data.resolve("pg_hba.conf")).content().contains("scram").doesNotContain("trust");
    }

    private ClusterStart start() {
        return ClusterStart.in(Home.open(home, programs()));
    }

    private static Path programs() {
        return Path.of("target/database-programs");
    }

    private static void end(ProcessHandle database) {
        database.destroyForcibly();
        database.onExit().join();
    }

    /** The first value of the last statement's answer. */
    private static String ask(Cluster database, String sql) throws SQLException {
        try (var connection = DriverManager.getConnection(database.jdbcUrl(), "postgres", database.password());
                var statement = connection.createStatement()) {
            boolean rows = statement.execute(sql);
            while (!rows) {
                rows = statement.getMoreResults();
            }
            try (var answer = statement.getResultSet()) {
                answer.next();
                return answer.getString(1);
            }
        }
    }
}
