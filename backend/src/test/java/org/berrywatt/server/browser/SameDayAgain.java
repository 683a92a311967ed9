package org.berrywatt.server.browser;

import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.CellAnswer;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.LabDayRequest;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The records that count on a day of one light station, entered once more on a day of their own in the reverse order.
 *
 * @param light what the station's instrument showed
 */
record SameDayAgain(MockMvcTester server, JsonMapper json, Bench first, Typed light, Instant lightRead) {

    /** Lets each team of a new day declare one cell, so that a missing one does not count as 0 when the day is closed. */
    static void oneCellEach(Bench day) {
        var request = new LabDayRequest(
                day.day.title(),
                day.day.date(),
                new Typed("100", "Wm2"),
                new Typed("1", "cm2"),
                "medianOfDeclared",
                1,
                true);
        assertThat(day.teacher.putIfMatch("\"0\"", request, "/api/labdays/{id}", day.day.id()))
                .hasStatusOk();
    }

    /** Name, place and figure of every team in order. */
    List<String> places() {
        return places(first);
    }

    /** The same of the day entered in reverse and closed. */
    List<String> placesWhenEnteredInReverse() {
        var again = new Bench(server, json);
        oneCellEach(again);
        var station = again.station("Window bench");
        reversed(cells()).forEach(cell -> enter(again, station, cell));
        var request = new IrradianceRequest(station, light, null, lightRead);
        assertThat(again.teacher.put(request, "/api/irradiances/{id}", UUID.randomUUID()))
                .hasStatusOk();
        again.setEntry(false);
        return places(again);
    }

    private void enter(Bench again, UUID station, CellAnswer cell) {
        Api phone = again.team(teamOf(cell));
        var copy = UUID.randomUUID();
        var register = new CellRequest(
                Bench.teamId(phone), cell.label(), List.of(), new Typed("15 x 15", "mm"), cell.registeredAt());
        assertThat(phone.put(register, "/api/cells/{id}", copy)).hasStatusOk();
        reversed(thatCount(cell)).forEach(reading -> enter(phone, copy, station, reading));
    }

    private static void enter(Api phone, UUID cell, UUID station, ReadingAnswer reading) {
        var request = new ReadingRequest(
                cell,
                reading.kind(),
                reading.stationId() == null ? null : station,
                reading.voltage(),
                reading.current(),
                null,
                null,
                null,
                true,
                null,
                null,
                reading.acceptedAt());
        assertThat(phone.put(request, "/api/readings/{id}", UUID.randomUUID())).hasStatusOk();
    }

    private List<CellAnswer> cells() {
        return first.teacher.answers(first.teacher.get("/api/labdays/{id}/cells", first.day.id()), CellAnswer.class);
    }

    /** The latest reading of each kind. */
    private List<ReadingAnswer> thatCount(CellAnswer cell) {
        var byKind = new LinkedHashMap<String, ReadingAnswer>();
        first.teacher
                .answers(first.teacher.get("/api/cells/{id}/readings", cell.id()), ReadingAnswer.class)
                .forEach(reading -> byKind.put(reading.kind(), reading));
        return List.copyOf(byKind.values());
    }

    private String teamOf(CellAnswer cell) {
        var names = first
                .teacher
                .answers(first.teacher.get("/api/labdays/{id}/teams", first.day.id()), TeamAnswer.class)
                .stream()
                .collect(toMap(TeamAnswer::id, TeamAnswer::name));
        return Objects.requireNonNull(names.get(cell.teamId()));
    }

    private List<String> places(Bench day) {
        return teams(day)
                .valueStream()
                .map(team -> team.get("name").asString() + " " + team.get("place") + " " + team.at("/figure/value"))
                .toList();
    }

    private JsonNode teams(Bench day) {
        var answer =
                server.get().uri("/api/labdays/{id}/leaderboard", day.day.id()).exchange();
        return json.readTree(answer.getResponse().getContentAsByteArray()).at("/body/teams");
    }

    private static <T> List<T> reversed(List<T> list) {
        var copy = new ArrayList<>(list);
        Collections.reverse(copy);
        return copy;
    }
}
