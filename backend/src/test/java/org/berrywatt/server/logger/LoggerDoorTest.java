package org.berrywatt.server.logger;

import static org.assertj.core.api.Assertions.assertThat;

import org.berrywatt.contract.LoggedAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

/** What devices send. */
@ServerTest
class LoggerDoorTest {

    @Autowired
    private MockMvcTester server;

    @Autowired
    private JsonMapper json;

    private LoggerDesk desk;

    @BeforeEach
    void layOut() {
        desk = new LoggerDesk(server, json);
    }

    @Test
    void takesAReadingOfItsTeamsCell() {
        var answer = desk.bench.teacher.answer(desk.send(desk.teams(), LoggerDesk.LIGHT), LoggedAnswer.class);

        assertThat(desk.readings()).singleElement().satisfies(reading -> {
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
        assertThat(desk.send(desk.teams(), sweep)).hasStatusOk();
        assertThat(desk.readings())
                .singleElement()
                .satisfies(reading -> assertThat(reading.points()).hasSize(5));
    }

    @Test
    void takesTheLightOfItsStation() {
        assertThat(desk.send(desk.stations(), """
                {"id": "1", "light": "1520 lx"}""")).hasStatusOk();
        assertThat(desk.bench.teacher.answers(
                        desk.bench.teacher.get("/api/labdays/{id}/stations", desk.bench.day.id()), StationAnswer.class))
                .singleElement()
                .satisfies(answer -> assertThat(answer.readings()).hasSize(1));
    }

    @Test
    void keepsAReadingOnceHoweverOftenItComes() {
        var token = desk.teams();
        var first = desk.bench.teacher.answer(desk.send(token, LoggerDesk.LIGHT), LoggedAnswer.class);
        assertThat(desk.bench.teacher.answer(desk.send(token, LoggerDesk.LIGHT), LoggedAnswer.class))
                .isEqualTo(first);
        assertThat(desk.readings()).hasSize(1);
    }

    @Test
    void refusesAnotherReadingUnderTheSameId() {
        var token = desk.teams();
        desk.send(token, LoggerDesk.LIGHT);
        desk.refused(desk.send(token, LoggerDesk.LIGHT.replace("412", "413")), ProblemCode.ID_REUSED, 409);
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
        var answer = desk.send(desk.teams(), LoggerDesk.LIGHT.replace(right, wrong));
        assertThat(answer).hasStatus(422);
        assertThat(desk.bench.teacher.problem(answer, code).detail()).contains(sentence);
        assertThat(desk.readings()).isEmpty();
    }

    @Test
    void refusesWhenTheDayIsClosed() {
        var token = desk.teams();
        desk.bench.setEntry(false);
        desk.refused(desk.send(token, LoggerDesk.LIGHT), ProblemCode.LABDAY_CLOSED, 409);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "Bearer", "Bearer short", "Basic YTpi", "Bearer AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA"
            })
    void refusesWhatIsNoTokenOfThisServer(String header) {
        var answer = desk.posting()
                .header("Authorization", header)
                .content(LoggerDesk.LIGHT)
                .exchange();
        desk.refused(answer, ProblemCode.LOGGER_TOKEN, 401);
    }

    @Test
    void looksAtNoCookie() {
        desk.refused(desk.bench.teacher.post(LoggerDesk.LIGHT, "/api/logger/readings"), ProblemCode.LOGGER_TOKEN, 401);
    }

    @Test
    void slowsDownADeviceThatSendsTooMuch() {
        var token = desk.teams();
        MvcTestResult answer;
        int sent = 0;
        do {
            answer = desk.send(token, "{\"id\": \"x\"}");
            sent++;
        } while (answer.getResponse().getStatus() != 429 && sent < 200);

        assertThat(sent).isGreaterThan(60);
        assertThat(desk.refused(answer, ProblemCode.LOGGER_TOO_MANY, 429).detail())
                .contains("60");
        assertThat(answer.getResponse().getHeader("Retry-After")).isNotBlank();
    }

    @Test
    void slowsDownGuessesFromOneAddressAndNobodyElseThere() {
        MvcTestResult answer;
        int tried = 0;
        do {
            answer = desk.posting()
                    .remoteAddress("10.9.8.7")
                    .header("Authorization", "Bearer x")
                    .content(LoggerDesk.LIGHT)
                    .exchange();
            tried++;
        } while (answer.getResponse().getStatus() == 401 && tried < 200);
        desk.refused(answer, ProblemCode.SLOW_DOWN, 429);
        assertThat(desk.bench.teacher.from("10.9.8.7").get("/api/labdays")).hasStatusOk();
    }
}
