package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a person sees on starting the server: the way in, or the one sentence that says what to do. */
class StartIT {

    @Test
    void printsTheWayInAndTheSetupKeyOnTheFirstStart() throws Exception {
        try (var server = bare(ServerProcess.newHome()).ready()) {
            assertThat(server.get("/api/access").body()).contains("\"setupNeeded\":true");
            assertThat(server.output())
                    .contains("Berrywatt is ready.")
                    .contains(server.baseUrl())
                    .containsPattern("[a-z2-9]{4}(-[a-z2-9]{4}){3}");
            assertThat(server.errors()).isEmpty();
        }
    }

    @Test
    void endsWithOneSentenceWhenThePortIsBusy() throws Exception {
        try (var socket = new ServerSocket(0)) {
            var port = socket.getLocalPort();
            var server = ServerProcess.start(List.of(), ServerProcess.JAR, port, ServerProcess.newHome());
            assertRefused(server, "Port " + port + " is already in use", "--server.port=" + (port + 1));
        }
    }

    @Test
    void endsWithOneSentenceWhenAnotherServerUsesTheHome() throws Exception {
        var home = ServerProcess.newHome();
        try (var first = ServerProcess.start(home).ready()) {
            assertRefused(ServerProcess.start(home), "Another Berrywatt is already running on the data in " + home);
            assertThat(first.get("/actuator/health").statusCode()).isEqualTo(200);
        }
    }

    @Test
    void endsWithOneSentenceWhenTheHomeCannotBeAFolder() throws Exception {
        var home = Files.createFile(ServerProcess.newHome()).resolve("below-a-file");
        assertRefused(ServerProcess.start(home), "The folder " + home + " cannot be written");
    }

    @Test
    void endsWithOneSentenceWhenAnotherPostgresWroteTheData() throws Exception {
        var home = ServerProcess.newHome();
        Files.writeString(Files.createDirectories(home.resolve("database")).resolve("PG_VERSION"), "17\n");
        assertRefused(ServerProcess.start(home), "were written by PostgreSQL 17", "brings PostgreSQL 18");
    }

    @Test
    void endsWithOneSentenceWhenTheNamedDatabaseDoesNotAnswer() throws Exception {
        var nobody = "jdbc:postgresql://127.0.0.1:" + ServerProcess.freePort() + "/berrywatt";
        assertRefused(
                ServerProcess.start(ServerProcess.newHome(), "--spring.datasource.url=" + nobody),
                "The database does not answer",
                "spring.datasource.url");
    }

    @Test
    void endsWithOneSentenceWhenTheDemoIsMisspelt() throws Exception {
        assertRefused(ServerProcess.start(ServerProcess.newHome(), "--demo=lively"), "no demo called “lively”");
    }

    @Test
    void endsWithOneSentenceWhenTheDataAreNotADatabase() throws Exception {
        var home = ServerProcess.newHome();
        Files.writeString(Files.createDirectories(home).resolve("database"), "a file where a folder should be");
        assertRefused(ServerProcess.start(home), "The database in " + home);
    }

    /** Unpacks the database's programs into its home, as for a person. */
    private static ServerProcess bare(Path home) throws IOException {
        return ServerProcess.start(List.of(), ServerProcess.JAR, ServerProcess.freePort(), home);
    }

    private static void assertRefused(ServerProcess server, String... parts) throws Exception {
        try (server) {
            assertThat(server.exitCode()).isNotZero();
            assertThat(server.errors()).contains(parts).hasLineCount(1).doesNotContain("Exception", "\tat ");
            assertThat(server.output()).doesNotContain("Exception", "\tat ");
        }
    }
}
