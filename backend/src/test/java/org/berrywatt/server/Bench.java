package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.EntryRequest;
import org.berrywatt.contract.LabDayAnswer;
import org.berrywatt.contract.LabDayRequest;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SignOffRequest;
import org.berrywatt.contract.StationRequest;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.TeamRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.access.Caller;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** A lab day laid out for a test: a teacher, and by and by teams, cells and stations of its own. */
public final class Bench {

    public static final Instant NOTICED = Instant.parse("2026-11-25T10:15:30Z");

    public final Api teacher;
    public final LabDayAnswer day;

    public Bench(MockMvcTester server, JsonMapper json) {
        teacher = new Api(server, json, new Caller.Teacher(UUID.randomUUID(), "Ms Alder"));
        day = teacher.answer(
                teacher.put(dayRequest("Berry day"), "/api/labdays/{id}", UUID.randomUUID()), LabDayAnswer.class);
    }

    /** The join code of this day. */
    public String code() {
        return Objects.requireNonNull(day.code());
    }

    /** The code by which a phone joins a team. */
    public String codeOf(Api team) {
        return teacher.answers(teacher.get("/api/labdays/{id}/teams", day.id()), TeamAnswer.class).stream()
                .filter(each -> each.id().equals(teamId(team)))
                .map(TeamAnswer::code)
                .findFirst()
                .orElseThrow();
    }

    public static LabDayRequest dayRequest(String title) {
        return new LabDayRequest(
                title,
                LocalDate.of(2026, 11, 25),
                new Typed("100", "Wm2"),
                new Typed("1", "cm2"),
                "medianOfDeclared",
                3,
                true);
    }

    /** A new team of this day, as its phone. */
    public Api team(String name) {
        var team = teacher.answer(
                teacher.put(new TeamRequest(day.id(), null, name), "/api/teams/{id}", UUID.randomUUID()),
                TeamAnswer.class);
        return teacher.asTeam(team.id(), day.id());
    }

    public static UUID teamId(Api team) {
        return ((Caller.TeamMember) team.caller()).teamId();
    }

    /** A new cell of a team. */
    public UUID cell(Api team, String label) {
        var id = UUID.randomUUID();
        cell(team, id, label);
        return id;
    }

    /** A new cell of a team under an id of the test's own. */
    public void cell(Api team, UUID id, String label) {
        assertThat(team.put(cellRequest(teamId(team), label), "/api/cells/{id}", id))
                .hasStatusOk();
    }

    public static CellRequest cellRequest(UUID teamId, String label) {
        return new CellRequest(
                teamId,
                label,
                List.of(
                        new BuildValue("dyeSource", "hibiscus", null),
                        new BuildValue("bakeTemperature", "450", "degC")),
                new Typed("15 x 15", "mm"),
                NOTICED);
    }

    /** A new light station of this day. */
    public UUID station(String name) {
        var id = UUID.randomUUID();
        var request = new StationRequest(day.id(), name, "halogen", "luxMeter", new Typed("30", "cm"), null);
        assertThat(teacher.put(request, "/api/stations/{id}", id)).hasStatusOk();
        return id;
    }

    public static ReadingRequest darkRequest(UUID cellId, Typed voltage) {
        return new ReadingRequest(
                cellId, "dark", null, voltage, new Typed("0", "uA"), null, null, null, false, null, null, NOTICED);
    }

    public static ReadingRequest lightRequest(UUID cellId, UUID stationId, Typed voltage, Typed current) {
        return new ReadingRequest(
                cellId, "light", stationId, voltage, current, null, null, null, false, null, null, NOTICED);
    }

    /** Signs a team off for a zone for an hour from now. */
    public void signOff(Api team, Zone zone) {
        var request = new SignOffRequest(teamId(team), zone.key(), zone.points(), 60, null);
        assertThat(teacher.put(request, "/api/sign-offs/{id}", UUID.randomUUID()))
                .hasStatusOk();
    }

    public void setEntry(boolean open) {
        assertThat(teacher.put(new EntryRequest(open), "/api/labdays/{id}/entry", day.id()))
                .hasStatusOk();
    }

    /** The id of what the teacher makes by a request. */
    public UUID made(Object request, String uri) {
        var id = UUID.randomUUID();
        assertThat(teacher.put(request, uri, id)).hasStatusOk();
        return id;
    }
}
