package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The whole server in one file, made while it runs, and another server that begins with it. */
class BackupIT {

    private static final String LEADERBOARD = "/api/labdays/aa58bc55-753e-3aa0-b694-aa211ee09989/leaderboard";

    private final Path home = ServerProcess.newHome();
    private final Path other = ServerProcess.newHome();
    private final Path file = other.resolveSibling("monday.zip");

    BackupIT() throws IOException {}

    @Test
    void startsElsewhereWithTheSamePlacesAsTheServerAtWorkHad() throws Exception {
        JsonNode places;
        try (var server = ServerProcess.start(home, "--demo").ready()) {
            Awaitility.await()
                    .atMost(Duration.ofMinutes(2))
                    .until(() -> server.get(LEADERBOARD).statusCode() == 200);
            places = places(server);
            assertThat(errand(home, "--backup=" + file)).contains("monday.zip");
        }
        assertThat(errand(other, "--restore=" + file)).contains("Start the server with this folder");
        try (var server = ServerProcess.start(other).ready()) {
            assertThat(places(server)).isNotEmpty().isEqualTo(places);
        }
        refusesWhatWouldLoseData();
    }

    private void refusesWhatWouldLoseData() throws Exception {
        assertThat(errand(home, "--backup=" + file)).contains("is there already");
        assertThat(errand(other, "--restore=" + file)).contains("they are kept");

        var half = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(half, half.length / 2));
        var third = ServerProcess.newHome();
        assertThat(errand(third, "--restore=" + file)).contains("is not a complete backup");
        assertThat(third.resolve("database")).doesNotExist();
    }

    private static String errand(Path home, String word) throws Exception {
        try (var process = ServerProcess.start(home, word)) {
            var failed = process.exitCode() != 0;
            return failed ? process.errors() : process.output();
        }
    }

    private static JsonNode places(ServerProcess server) throws Exception {
        return new JsonMapper()
                .readTree(server.get(LEADERBOARD).body())
                .get("body")
                .get("teams");
    }
}
