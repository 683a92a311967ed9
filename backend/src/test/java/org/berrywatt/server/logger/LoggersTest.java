package org.berrywatt.server.logger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.LoggedAnswer;
import org.berrywatt.contract.LoggerAnswer;
import org.berrywatt.contract.LoggerRequest;
import org.berrywatt.contract.Problem;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.RemovalRequest;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class LoggersTest {

    private static final String LIGHT = """
            {"id": "17", "cell": "C1", "kind": "light", "station": "Lamp", "voltage": "412 mV", "current": "95 uA"}""";

    @Autowired
    private MockMvcTester server;

    @Autowired
    private JsonMapper json;

    @Autowired
    private JdbcClient database;

    private Bench bench;
    private Api team;
    private UUID cell;
    private UUID station;

    @BeforeEach
    void layOut() {
        bench = new Bench(server, json);
        team = bench.team("Sloe");
        cell = bench.cell(team, "C1");
        station = bench.station("Lamp");
        bench.cell(bench.team("Elder"), "E1");
    }

    @Test
    void takesAReadingOfItsTeamsCell() {
        var answer = bench.teacher.answer(send(teams(), LIGHT), LoggedAnswer.class);

        assertThat(readings()).singleElement().satisfies(reading -> {
            assertThat(reading.id()).isEqualTo(answer.entryId());
            assertThat(reading.voltageV()).isEqualTo(0.412);
            assertThat(reading.by()).isEqualTo("team");
        });
    }

    @Test
    void takesASweep() {
        var sweep = """
                {"id": "s1", "cell": "c1", "kind": "sweep", "station": "lamp", "points": [
                  {"voltage": "10 mV", "current": "95 uA"}, {"voltage": "200 mV", "current": "90 uA"},
                  {"voltage": "300 mV", "current": "70 uA"}, {"voltage": "380 mV", "current": "30 uA"},
                  {"voltage": "410 mV", "current": "2 uA"}]}""";
        assertThat(send(teams(), sweep)).hasStatusOk();
        assertThat(readings())
                .singleElement()
                .satisfies(reading -> assertThat(reading.points()).hasSize(5));
    }

    @Test
    void takesTheLightOfItsStation() {
        assertThat(send(stations(), """
                {"id": "1", "light": "1520 lx"}""")).hasStatusOk();
        assertThat(bench.teacher.answers(
                        bench.teacher.get("/api/labdays/{id}/stations", bench.day.id()), StationAnswer.class))
                .singleElement()
                .satisfies(answer -> assertThat(answer.readings()).hasSize(1));
    }

    @Test
    void keepsAReadingOnceHoweverOftenItComes() {
        var token = teams();
        var first = bench.teacher.answer(send(token, LIGHT), LoggedAnswer.class);
        assertThat(bench.teacher.answer(send(token, LIGHT), LoggedAnswer.class)).isEqualTo(first);
        assertThat(readings()).hasSize(1);
    }

    @Test
    void refusesAnotherReadingUnderTheSameId() {
        var token = teams();
        send(token, LIGHT);
        refused(send(token, LIGHT.replace("412", "413")), ProblemCode.ID_REUSED, 409);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            C1    | E1      | logger.nameUnknown    | C1
            Lamp  | Lantern | logger.nameUnknown    | Lamp
            412 mV| 412     | quantity.unknownUnit  | mV
            412 mV| 40 V    | quantity.impossible   | [-3, 3] V
            412 mV| 1.2 V   | quantity.unusual      | [-0.9, 0.9] V
            light | glow    | choice.unknown        | dark, light, sweep
            """)
    void saysWhatIsWrongWithAReading(String right, String wrong, String code, String sentence) {
        var answer = send(teams(), LIGHT.replace(right, wrong));
        assertThat(answer).hasStatus(422);
        assertThat(bench.teacher.problem(answer, code).detail()).contains(sentence);
        assertThat(readings()).isEmpty();
    }

    @Test
    void refusesWhenTheDayIsClosed() {
        var token = teams();
        bench.setEntry(false);
        refused(send(token, LIGHT), ProblemCode.LABDAY_CLOSED, 409);
    }

    @Test
    void refusesATokenThatWasRevoked() {
        var made = made(new LoggerRequest("Box", Bench.teamId(team), null));
        assertThat(bench.teacher.put("", "/api/loggers/{id}/revocation", made.id()))
                .hasStatusOk();

        var answer = send(made.token(), LIGHT);

        assertThat(refused(answer, ProblemCode.LOGGER_TOKEN, 401).detail()).contains("revoked", "teacher");
        assertThat(answer.getResponse().getHeader("WWW-Authenticate")).isEqualTo("Bearer");
        assertThat(listed())
                .singleElement()
                .satisfies(each -> assertThat(each.revokedAt()).isNotNull());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "Bearer", "Bearer short", "Basic YTpi", "Bearer AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA"
            })
    void refusesWhatIsNoTokenOfThisServer(String header) {
        var answer = posting().header("Authorization", header).content(LIGHT).exchange();
        refused(answer, ProblemCode.LOGGER_TOKEN, 401);
    }

    @Test
    void looksAtNoCookie() {
        refused(bench.teacher.post(LIGHT, "/api/logger/readings"), ProblemCode.LOGGER_TOKEN, 401);
    }

    @Test
    void slowsDownADeviceThatSendsTooMuch() {
        var token = teams();
        MvcTestResult answer;
        int sent = 0;
        do {
            answer = send(token, "{\"id\": \"x\"}");
            sent++;
        } while (answer.getResponse().getStatus() != 429 && sent < 200);

        assertThat(sent).isGreaterThan(60);
        assertThat(refused(answer, ProblemCode.LOGGER_TOO_MANY, 429).detail()).contains("60");
        assertThat(answer.getResponse().getHeader("Retry-After")).isNotBlank();
    }

    @Test
    void slowsDownGuessesFromOneAddressAndNobodyElseThere() {
        MvcTestResult answer;
        int tried = 0;
        do {
            answer = posting()
                    .remoteAddress("10.9.8.7")
                    .header("Authorization", "Bearer x")
                    .content(LIGHT)
                    .exchange();
            tried++;
        } while (answer.getResponse().getStatus() == 401 && tried < 200);
        refused(answer, ProblemCode.SLOW_DOWN, 429);
        assertThat(bench.teacher.from("10.9.8.7").get("/api/labdays")).hasStatusOk();
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
        var uri = door.replace("{day}", bench.day.id().toString()).replace("{cell}", cell.toString());
        var answer = server.get()
                .uri(uri)
                .header("Authorization", "Bearer " + teams())
                .exchange();
        refused(answer, ProblemCode.SIGN_IN_NEEDED, 401);
    }

    @Test
    void writesThroughNoOtherDoor() {
        var answer = server.put()
                .uri("/api/readings/{id}", UUID.randomUUID())
                .header("Authorization", "Bearer " + teams())
                .contentType(MediaType.APPLICATION_JSON)
                .content(LIGHT)
                .exchange();
        refused(answer, ProblemCode.PAGE_OUTDATED, 403);
        assertThat(readings()).isEmpty();
    }

    @Test
    void tellsATokenOnceAndKeepsOnlyWhatCannotBeTurnedBack() {
        var token = teams();
        assertThat(listed())
                .singleElement()
                .satisfies(each -> assertThat(each.token()).isNull());
        assertThat(database.sql("select token_hash from logger where lab_day_id = ?")
                        .param(bench.day.id())
                        .query(String.class)
                        .single())
                .hasSize(64)
                .isNotEqualTo(token);
    }

    @Test
    void leavesTokensOutOfAnArchiveAndGoesWithItsDay() {
        teams();
        var archive = bench.teacher.get("/api/labdays/{id}/archive", bench.day.id());
        assertThat(new String(archive.getResponse().getContentAsByteArray(), StandardCharsets.ISO_8859_1))
                .contains("reading")
                .doesNotContain("logger");

        bench.teacher.post(new RemovalRequest(bench.day.title()), "/api/labdays/{id}/removal", bench.day.id());

        assertThat(database.sql("select count(*) from logger where lab_day_id = ?")
                        .param(bench.day.id())
                        .query(Long.class)
                        .single())
                .isZero();
    }

    @Test
    void isForOneThingOfItsOwnDay() {
        var both = new LoggerRequest("Box", Bench.teamId(team), station);
        refused(post(both), ProblemCode.VALUE_MISSING, 422);
        refused(post(new LoggerRequest("Box", null, null)), ProblemCode.VALUE_MISSING, 422);
        var other = new Bench(server, json).team("Hawthorn");
        refused(post(new LoggerRequest("Box", Bench.teamId(other), null)), ProblemCode.NOT_FOUND, 404);
    }

    private MvcTestResult post(LoggerRequest request) {
        return bench.teacher.post(request, "/api/labdays/{id}/loggers", bench.day.id());
    }

    private LoggerAnswer made(LoggerRequest request) {
        return bench.teacher.answer(post(request), LoggerAnswer.class);
    }

    private @Nullable String teams() {
        return made(new LoggerRequest("Box", Bench.teamId(team), null)).token();
    }

    private @Nullable String stations() {
        return made(new LoggerRequest("Lux box", null, station)).token();
    }

    private List<LoggerAnswer> listed() {
        return bench.teacher.answers(
                bench.teacher.get("/api/labdays/{id}/loggers", bench.day.id()), LoggerAnswer.class);
    }

    private List<ReadingAnswer> readings() {
        return bench.teacher.answers(bench.teacher.get("/api/cells/{id}/readings", cell), ReadingAnswer.class);
    }

    /** As a device sends it: no cookie, no CSRF token. */
    private MockMvcTester.MockMvcRequestBuilder posting() {
        return server.method(HttpMethod.POST).uri("/api/logger/readings").contentType(MediaType.APPLICATION_JSON);
    }

    private MvcTestResult send(@Nullable String token, String reading) {
        return posting()
                .header("Authorization", "Bearer " + token)
                .content(reading)
                .exchange();
    }

    private Problem refused(MvcTestResult answer, ProblemCode code, int status) {
        assertThat(answer).hasStatus(status);
        return bench.teacher.problem(answer, code);
    }
}
