package org.berrywatt.server;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import org.awaitility.Awaitility;
import org.awaitility.core.ConditionFactory;
import org.junit.jupiter.api.Test;

/** The database is the server's to bring back, and ends with it. */
class DurabilityIT {

    private static final String TEACHER = """
            {"key": "%s", "name": "Quince", "password": "four green glass doors"}""";

    private final Path home = ServerProcess.newHome();

    DurabilityIT() throws IOException {}

    @Test
    void bringsTheDatabaseBackWhenItAloneIsKilledAndLeavesNoProcessOfItBehind() throws Exception {
        try (var server = serverWithATeacher()) {
            kill(ServerProcess.databaseOf(home));
            soon().until(() -> hasATeacher(server));
            var database = ServerProcess.databaseOf(home);
            server.end();
            soon().until(() -> !database.isAlive());
        }
    }

    private ServerProcess serverWithATeacher() throws Exception {
        var server = ServerProcess.start(home).ready();
        Browser.of(server).post("/api/access/setup", TEACHER.formatted(server.setupKey()));
        return server;
    }

    private static boolean hasATeacher(ServerProcess server) throws Exception {
        return server.get("/api/access").body().contains("\"setupNeeded\":false");
    }

    private static void kill(ProcessHandle process) {
        process.destroyForcibly();
        process.onExit().join();
    }

    private static ConditionFactory soon() {
        return Awaitility.await().atMost(Duration.ofMinutes(1));
    }
}
