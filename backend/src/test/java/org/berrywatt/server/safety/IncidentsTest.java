package org.berrywatt.server.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.IncidentAnswer;
import org.berrywatt.contract.IncidentRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class IncidentsTest {

    private static final String INCIDENT = "/api/incidents/{id}";
    private final UUID id = UUID.randomUUID();
    private final MockMvcTester server;
    private final JdbcClient database;
    private final Bench bench;

    @Autowired
    IncidentsTest(MockMvcTester server, JsonMapper json, JdbcClient database) {
        this.server = server;
        this.database = database;
        this.bench = new Bench(server, json);
    }

    @Test
    void writesAnIncidentDownOnceHoweverOftenItIsSent() {
        var first = put(id, request("A plate broke", null));
        assertThat(put(id, request("A plate broke", null))).isEqualTo(first);
        assertThat(listed()).containsExactly(first);
        var other = bench.teacher.put(request("A lamp broke", null), INCIDENT, id);
        bench.teacher.problem(other, ProblemCode.ID_REUSED);
    }

    @Test
    void keepsWhatACorrectionReplaces() {
        var correction = UUID.randomUUID();
        put(id, request("A plate broke", null));
        put(correction, request("Two plates broke", id));
        assertThat(listed())
                .extracting(IncidentAnswer::happened, IncidentAnswer::replacedBy)
                .containsExactly(tuple("A plate broke", correction), tuple("Two plates broke", null));
    }

    @Test
    void refusesToCorrectWhatIsCorrectedAlready() {
        put(id, request("A plate broke", null));
        put(UUID.randomUUID(), request("Two plates broke", id));
        var refused = bench.teacher.put(request("Three plates broke", id), INCIDENT, UUID.randomUUID());
        bench.teacher.problem(refused, ProblemCode.REPLACED_ALREADY);
    }

    @Test
    void keepsTheFirstLookHoweverOftenItIsSent() {
        assertThat(put(id, request("A plate broke", null)).lookedAt()).isNull();
        var first = look(id);
        assertThat(first.lookedAt()).isNotNull();
        assertThat(look(id)).isEqualTo(first);
        assertThat(listed()).containsExactly(first);
    }

    @Test
    void takesACorrectionOfWhatWasLookedAtForLookedAt() {
        var correction = UUID.randomUUID();
        put(id, request("A plate broke", null));
        var looked = look(id).lookedAt();
        assertThat(put(correction, request("Two plates broke", id)).lookedAt()).isEqualTo(looked);
    }

    @Test
    void findsNothingToLookAtWhereNothingWasWritten() {
        bench.teacher.problem(
                bench.teacher.put("", "/api/incidents/{id}/look", UUID.randomUUID()), ProblemCode.NOT_FOUND);
    }

    @ParameterizedTest(name = "zone {0}, happened {1}, done {2} is refused with {3} at {4}")
    @CsvSource({
        "picnic, A plate broke, Swept up, choice.unknown, zone",
        "glass, ' ', Swept up, text.empty, happened",
        "glass, A plate broke, no, text.tooShort, done",
        "glass, , Swept up, value.missing, happened"
    })
    void refusesWhatSaysTooLittle(
            @Nullable String zone, @Nullable String happened, String done, String code, String field) {
        var body = bench.teacher.json().createObjectNode();
        body.put("labDayId", bench.day.id().toString());
        body.put("zone", zone).put("happened", happened).put("done", done);
        body.put("noticedAt", Bench.NOTICED.toString());
        var refused = bench.teacher.put(body.toString(), INCIDENT, id);
        assertThat(refused).hasStatus(422);
        assertThat(bench.teacher.problem(refused, code).field()).isEqualTo(field);
    }

    @Test
    void refusesATeamOfAnotherDay() {
        var stranger = Bench.teamId(new Bench(server, bench.teacher.json()).team("Elder"));
        var request =
                new IncidentRequest(bench.day.id(), stranger, null, "A plate broke", "Swept up", null, Bench.NOTICED);
        bench.teacher.problem(bench.teacher.put(request, INCIDENT, id), ProblemCode.NOT_FOUND);
    }

    @Test
    void takesIncidentsWhileTheDayIsClosed() {
        bench.setEntry(false);
        assertThat(put(id, request("A plate broke", null)).replacedBy()).isNull();
    }

    @Test
    void keepsIncidentsApartFromTheLeaderboard() {
        put(id, request("A plate broke", null));
        Api nobody = bench.teacher.asNobody();
        var board = nobody.get("/api/labdays/{id}/leaderboard", bench.day.id());
        assertThat(board).hasStatusOk().bodyText().doesNotContain("A plate broke");
    }

    @Test
    void goesWithItsDay() {
        put(id, request("A plate broke", null));
        put(UUID.randomUUID(), request("Two plates broke", id));
        database.sql("delete from lab_day where id = ?").param(bench.day.id()).update();
        assertThat(database.sql("select count(*) from incident where lab_day_id = ?")
                        .param(bench.day.id())
                        .query(Integer.class)
                        .single())
                .isZero();
    }

    private IncidentAnswer look(UUID incident) {
        return bench.teacher.answer(bench.teacher.put("", "/api/incidents/{id}/look", incident), IncidentAnswer.class);
    }

    private IncidentRequest request(String happened, @Nullable UUID replaces) {
        return new IncidentRequest(bench.day.id(), null, "glass", happened, "Swept up", replaces, Bench.NOTICED);
    }

    private IncidentAnswer put(UUID incidentId, IncidentRequest request) {
        return bench.teacher.answer(bench.teacher.put(request, INCIDENT, incidentId), IncidentAnswer.class);
    }

    private List<IncidentAnswer> listed() {
        return bench.teacher.answers(
                bench.teacher.get("/api/labdays/{id}/incidents", bench.day.id()), IncidentAnswer.class);
    }
}
