package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A lab day with teams of three cells and a lit station, entered over HTTP by its teacher. */
final class MeasuredClass {

    private static final String NOTICED = "\"noticedAt\": \"2026-11-25T10:00:00Z\"";
    private static final int CELLS_PER_TEAM = 3;
    private static final Pattern READING_ID = Pattern.compile("\\{\"id\":\"([0-9a-f-]{36})\"");

    final UUID day = UUID.randomUUID();
    final UUID station = UUID.randomUUID();
    final List<UUID> cells;

    private MeasuredClass(List<UUID> cells) {
        this.cells = cells;
    }

    /** Makes the first teacher of a new server, and a day. */
    static MeasuredClass layOut(Browser teacher, String setupKey, int cells) throws IOException, InterruptedException {
        accepted(teacher.post("/api/access/setup", account(setupKey)).statusCode());
        return another(teacher, cells);
    }

    /** One more day of a teacher who is signed in. */
    static MeasuredClass another(Browser teacher, int cells) throws IOException, InterruptedException {
        var room =
                new MeasuredClass(Stream.generate(UUID::randomUUID).limit(cells).toList());
        room.enter(teacher);
        return room;
    }

    static void signIn(Browser teacher) throws IOException, InterruptedException {
        accepted(teacher.post("/api/access/sign-in", account("")).statusCode());
    }

    private void enter(Browser teacher) throws IOException, InterruptedException {
        put(teacher, "/api/labdays/" + day, """
                {"title": "Long day", "date": "2026-11-25", "referenceIrradiance": {"text": "100", "unit": "Wm2"},
                 "referenceArea": {"text": "1", "unit": "cm2"}, "rule": "medianOfDeclared", "cellsPerTeam": 3,
                 "teamsCreateThemselves": true}""");
        put(teacher, "/api/stations/" + station, """
                {"labDayId": "%s", "name": "Yard", "lamp": "sun", "instrument": "referenceCell"}""".formatted(day));
        put(teacher, "/api/irradiances/" + UUID.randomUUID(), """
                {"stationId": "%s", "reading": {"text": "1000 W/m2"}, %s}""".formatted(station, NOTICED));
        for (int first = 0; first < cells.size(); first += CELLS_PER_TEAM) {
            enterTeam(teacher, first);
        }
    }

    private void enterTeam(Browser teacher, int first) throws IOException, InterruptedException {
        var team = UUID.randomUUID();
        put(teacher, "/api/teams/" + team, """
                {"labDayId": "%s", "name": "Voles %d"}""".formatted(day, first));
        for (int cell = first; cell < Math.min(first + CELLS_PER_TEAM, cells.size()); cell++) {
            put(teacher, "/api/cells/" + cells.get(cell), """
                    {"teamId": "%s", "label": "V%d", "recipe": [], "area": {"text": "15 x 15 mm"}, %s}""".formatted(team, cell, NOTICED));
        }
    }

    String dark(UUID cell, String voltage) {
        return """
                {"cellId": "%s", "kind": "dark", "voltage": {"text": "%s"}, "current": {"text": "0 uA"},
                 "unusualConfirmed": false, %s}""".formatted(cell, voltage, NOTICED);
    }

    String lit(UUID cell, String voltage, String current) {
        return """
                {"cellId": "%s", "kind": "light", "stationId": "%s", "voltage": {"text": "%s"},
                 "current": {"text": "%s"}, "unusualConfirmed": true, %s}""".formatted(cell, station, voltage, current, NOTICED);
    }

    /** A sweep through seven resistors of a cell that gives nearly 1 mA. */
    String swept(UUID cell, int openCircuitMv) {
        var points = Stream.of(100, 220, 330, 390, 470, 1000, 10_000)
                .map(ohm -> """
                        {"load": {"text": "%d ohm"}, "voltage": {"text": "%d mV"}}""".formatted(ohm, Math.round(openCircuitMv * Math.tanh(0.9 * ohm / openCircuitMv))))
                .collect(Collectors.joining(", "));
        return """
                {"cellId": "%s", "kind": "sweep", "stationId": "%s", "points": [%s],
                 "unusualConfirmed": true, %s}""".formatted(cell, station, points, NOTICED);
    }

    /** The ids of all readings of all cells. */
    List<UUID> stored(Browser teacher) throws IOException, InterruptedException {
        var found = new ArrayList<UUID>();
        for (UUID cell : cells) {
            var answer = teacher.get("/api/cells/" + cell + "/readings").body();
            READING_ID.matcher(answer).results().forEach(id -> found.add(UUID.fromString(id.group(1))));
        }
        return found;
    }

    /** The leaderboard with its epoch and number. */
    JsonNode leaderboard(Browser anybody) throws IOException, InterruptedException {
        return new JsonMapper()
                .readTree(anybody.get("/api/labdays/" + day + "/leaderboard").body());
    }

    static void put(Browser teacher, String address, String json) throws IOException, InterruptedException {
        var answer = teacher.put(address, json);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    }

    private static String account(String key) {
        return """
                {"key": "%s", "name": "Quince", "password": "four green glass doors"}""".formatted(key);
    }

    private static void accepted(int status) {
        assertThat(status).isEqualTo(200);
    }
}
