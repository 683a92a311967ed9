package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Pattern;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;

/** Readings sent one after the other while server and database are killed under them. */
class AcknowledgedReadingsIT {

    private static final Pattern READING_ID = Pattern.compile("\\{\"id\":\"([0-9a-f-]{36})\"");
    private static final String DAY = """
            {"title": "Kill day", "date": "2026-11-25", "referenceIrradiance": {"text": "100", "unit": "Wm2"},
             "referenceArea": {"text": "1", "unit": "cm2"}, "rule": "medianOfDeclared", "cellsPerTeam": 3,
             "teamsCreateThemselves": true}""";
    private final List<UUID> sent = new CopyOnWriteArrayList<>();
    private final List<UUID> acknowledged = new CopyOnWriteArrayList<>();
    private final UUID cell = UUID.randomUUID();

    @Test
    void areThereOnceAfterServerAndDatabaseWereKilledInMidSentence() throws Exception {
        var home = ServerProcess.newHome();
        try (var first = ServerProcess.start(home).ready()) {
            var teacher = Browser.of(first);
            accepted(
                    teacher.post("/api/access/setup", account(first.setupKey())).statusCode());
            layOut(teacher);
            var sending = CompletableFuture.runAsync(() -> keepSending(teacher));
            Awaitility.await().atMost(Duration.ofMinutes(1)).until(() -> acknowledged.size() >= 40);
            var database = ServerProcess.databaseOf(home);
            database.destroyForcibly();
            first.kill();
            database.onExit().join();
            sending.join();
        }
        try (var second = ServerProcess.start(home).ready()) {
            var teacher = Browser.of(second);
            accepted(teacher.post("/api/access/sign-in", account("")).statusCode());
            assertThat(stored(teacher)).doesNotHaveDuplicates().containsAll(acknowledged);
            for (UUID id : sent) {
                accepted(teacher.put("/api/readings/" + id, reading("1 mV")).statusCode());
            }
            assertThat(stored(teacher)).containsExactlyInAnyOrderElementsOf(sent);
            assertThat(teacher.put("/api/readings/" + sent.get(0), reading("2 mV"))
                            .statusCode())
                    .isEqualTo(409);
        }
    }

    private void layOut(Browser teacher) throws IOException, InterruptedException {
        var day = UUID.randomUUID();
        var team = UUID.randomUUID();
        accepted(teacher.put("/api/labdays/" + day, DAY).statusCode());
        accepted(teacher.put("/api/teams/" + team, "{\"labDayId\": \"%s\", \"name\": \"Voles\"}".formatted(day))
                .statusCode());
        accepted(teacher.put("/api/cells/" + cell, """
                        {"teamId": "%s", "label": "V1", "recipe": [], "noticedAt": "2026-11-25T10:00:00Z"}""".formatted(team)).statusCode());
    }

    /** Sends until the connection breaks. */
    private void keepSending(Browser teacher) {
        boolean answered = true;
        while (answered) {
            var id = UUID.randomUUID();
            sent.add(id);
            answered = send(teacher, id);
        }
    }

    private boolean send(Browser teacher, UUID id) {
        try {
            boolean accepted =
                    teacher.put("/api/readings/" + id, reading("1 mV")).statusCode() == 200;
            return accepted && acknowledged.add(id);
        } catch (IOException | InterruptedException broken) {
            return false;
        }
    }

    private List<UUID> stored(Browser teacher) throws IOException, InterruptedException {
        var answer = teacher.get("/api/cells/" + cell + "/readings").body();
        return READING_ID
                .matcher(answer)
                .results()
                .map(found -> UUID.fromString(found.group(1)))
                .toList();
    }

    private String reading(String voltage) {
        return """
                {"cellId": "%s", "kind": "dark", "voltage": {"text": "%s"}, "current": {"text": "0 uA"},
                 "unusualConfirmed": false, "noticedAt": "2026-11-25T10:00:00Z"}""".formatted(cell, voltage);
    }

    private static String account(String key) {
        return """
                {"key": "%s", "name": "Quince", "password": "four green glass doors"}""".formatted(key);
    }

    private static void accepted(int status) {
        assertThat(status).isEqualTo(200);
    }
}
