package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.regex.Pattern;
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
            Browser.of(first).post("/api/access/setup", TEACHER.formatted(setupKey(first)));
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
            Browser.of(first).post("/api/access/setup", TEACHER.formatted(setupKey(first)));
            var database = postmaster(home);
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
            Browser.of(server).post("/api/access/setup", TEACHER.formatted(setupKey(server)));
            var database = postmaster(home);
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
            var database = postmaster(home);
            server.end();
            Awaitility.await().atMost(Duration.ofMinutes(1)).until(() -> !database.isAlive());
        }
    }

    private static String setupKey(ServerProcess server) throws IOException {
        Awaitility.await().until(() -> server.output().contains("key once"));
        var key = Pattern.compile("[a-z2-9]{4}(-[a-z2-9]{4}){3}").matcher(server.output());
        assertThat(key.find()).isTrue();
        return key.group();
    }

    private static ProcessHandle postmaster(Path home) throws IOException {
        var pid = Files.readAllLines(home.resolve("database/postmaster.pid")).get(0);
        return ProcessHandle.of(Long.parseLong(pid.strip())).orElseThrow();
    }
}
