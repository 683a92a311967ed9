package org.berrywatt.server.logger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.berrywatt.contract.LoggerRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.RemovalRequest;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** Who may send: tokens, made, told once, revoked, gone with their day. */
@ServerTest
class LoggersTest {

    @Autowired
    private MockMvcTester server;

    @Autowired
    private JsonMapper json;

    @Autowired
    private JdbcClient database;

    private LoggerDesk desk;

    @BeforeEach
    void layOut() {
        desk = new LoggerDesk(server, json);
    }

    @Test
    void refusesATokenThatWasRevoked() {
        var made = desk.made(new LoggerRequest("Box", Bench.teamId(desk.team), null));
        assertThat(desk.bench.teacher.put("", "/api/loggers/{id}/revocation", made.id()))
                .hasStatusOk();

        var answer = desk.send(made.token(), LoggerDesk.LIGHT);

        assertThat(desk.refused(answer, ProblemCode.LOGGER_TOKEN, 401).detail()).contains("revoked", "teacher");
        assertThat(answer.getResponse().getHeader("WWW-Authenticate")).isEqualTo("Bearer");
        assertThat(desk.listed())
                .singleElement()
                .satisfies(each -> assertThat(each.revokedAt()).isNotNull());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api/labdays",
                "/api/labdays/{day}",
                "/api/labdays/{day}/cells",
                "/api/cells/{cell}/readings",
                "/api/labdays/{day}/loggers"
            })
    void opensNoOtherDoor(String door) {
        var uri = door.replace("{day}", desk.bench.day.id().toString()).replace("{cell}", desk.cell.toString());
        var answer = server.get()
                .uri(uri)
                .header("Authorization", "Bearer " + desk.teams())
                .exchange();
        desk.refused(answer, ProblemCode.SIGN_IN_NEEDED, 401);
    }

    @Test
    void writesThroughNoOtherDoor() {
        var answer = server.put()
                .uri("/api/readings/{id}", UUID.randomUUID())
                .header("Authorization", "Bearer " + desk.teams())
                .contentType(MediaType.APPLICATION_JSON)
                .content(LoggerDesk.LIGHT)
                .exchange();
        desk.refused(answer, ProblemCode.PAGE_OUTDATED, 403);
        assertThat(desk.readings()).isEmpty();
    }

    @Test
    void tellsATokenOnceAndKeepsOnlyWhatCannotBeTurnedBack() {
        var token = desk.teams();
        assertThat(desk.listed())
                .singleElement()
                .satisfies(each -> assertThat(each.token()).isNull());
        assertThat(database.sql("select token_hash from logger where lab_day_id = ?")
                        .param(desk.bench.day.id())
                        .query(String.class)
                        .single())
                .hasSize(64)
                .isNotEqualTo(token);
    }

    @Test
    void leavesTokensOutOfAnArchiveAndGoesWithItsDay() {
        desk.teams();
        var archive = desk.bench.teacher.get("/api/labdays/{id}/archive", desk.bench.day.id());
        assertThat(new String(archive.getResponse().getContentAsByteArray(), StandardCharsets.ISO_8859_1))
                .contains("reading")
                .doesNotContain("logger");

        desk.bench.teacher.post(
                new RemovalRequest(desk.bench.day.title()), "/api/labdays/{id}/removal", desk.bench.day.id());

        assertThat(database.sql("select count(*) from logger where lab_day_id = ?")
                        .param(desk.bench.day.id())
                        .query(Long.class)
                        .single())
                .isZero();
    }

    @Test
    void isForOneThingOfItsOwnDay() {
        var both = new LoggerRequest("Box", Bench.teamId(desk.team), desk.station);
        desk.refused(desk.post(both), ProblemCode.VALUE_MISSING, 422);
        desk.refused(desk.post(new LoggerRequest("Box", null, null)), ProblemCode.VALUE_MISSING, 422);
        var other = new Bench(server, json).team("Hawthorn");
        desk.refused(desk.post(new LoggerRequest("Box", Bench.teamId(other), null)), ProblemCode.NOT_FOUND, 404);
    }
}
