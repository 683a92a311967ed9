package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;

/** What the server has acknowledged is still there, whoever was killed in between. */
class DurabilityIT {

    private static final String TEACHER = """
            {"key": "%s", "name": "Quince", "password": "four green glass doors"}""";

    @Test
    void keepsWhatItAcknowledgedWhenTheServerIsKilled() throws Exception {
        var home = ServerProcess.newHome();
        try (var first = ServerProcess.start(home).ready()) {
            Browser.of(first).post("/api/access/setup", TEACHER.formatted(first.setupKey()));
            first.kill();
        }
        try (var second = ServerProcess.start(home).ready()) {
            assertThat(second.get("/api/access").body()).contains("\"setupNeeded\":false");
        }
    }

    @Test
    void keepsWhatItAcknowledgedWhenServerAndDatabaseAreKilledTogether() throws Exception {
        var home = ServerProcess.newHome();
        try (var first = ServerProcess.start(home).ready()) {
            Browser.of(first).post("/api/access/setup", TEACHER.formatted(first.setupKey()));
            var database = ServerProcess.databaseOf(home);
            first.kill();
            database.destroyForcibly();
            database.onExit().join();
        }
        try (var second = ServerProcess.start(home).ready()) {
            assertThat(second.get("/api/access").body()).contains("\"setupNeeded\":false");
        }
    }

    @Test
    void bringsTheDatabaseBackWhenItAloneIsKilled() throws Exception {
        var home = ServerProcess.newHome();
        try (var server = ServerProcess.start(home).ready()) {
            Browser.of(server).post("/api/access/setup", TEACHER.formatted(server.setupKey()));
            var database = ServerProcess.databaseOf(home);
            database.destroyForcibly();
            database.onExit().join();
            Awaitility.await()
                    .atMost(Duration.ofMinutes(1))
                    .until(() -> server.get("/api/access").body().contains("\"setupNeeded\":false"));
        }
    }

    @Test
    void leavesNoDatabaseProcessBehindWhenItIsEnded() throws Exception {
        var home = ServerProcess.newHome();
        try (var server = ServerProcess.start(home).ready()) {
            var database = ServerProcess.databaseOf(home);
            server.end();
            Awaitility.await().atMost(Duration.ofMinutes(1)).until(() -> !database.isAlive());
        }
    }
}
