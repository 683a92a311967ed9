package org.berrywatt.server.logger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.LoggerAnswer;
import org.berrywatt.contract.LoggerRequest;
import org.berrywatt.contract.Problem;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

/** A lab day with a team, a cell and a lamp, and devices that send readings of them. */
final class LoggerDesk {

    static final String LIGHT = """
            {"id": "17", "cell": "C1", "kind": "light", "station": "Lamp", "voltage": "412 mV", "current": "95 uA"}""";

    final Bench bench;
    final Api team;
    final UUID cell;
    final UUID station;
    private final MockMvcTester server;

    LoggerDesk(MockMvcTester server, JsonMapper json) {
        this.server = server;
        bench = new Bench(server, json);
        team = bench.team("Sloe");
        cell = bench.cell(team, "C1");
        station = bench.station("Lamp");
        bench.cell(bench.team("Elder"), "E1");
    }

    MvcTestResult post(LoggerRequest request) {
        return bench.teacher.post(request, "/api/labdays/{id}/loggers", bench.day.id());
    }

    LoggerAnswer made(LoggerRequest request) {
        return bench.teacher.answer(post(request), LoggerAnswer.class);
    }

    @Nullable
    String teams() {
        return made(new LoggerRequest("Box", Bench.teamId(team), null)).token();
    }

    @Nullable
    String stations() {
        return made(new LoggerRequest("Lux box", null, station)).token();
    }

    List<LoggerAnswer> listed() {
        return bench.teacher.answers(
                bench.teacher.get("/api/labdays/{id}/loggers", bench.day.id()), LoggerAnswer.class);
    }

    List<ReadingAnswer> readings() {
        return bench.teacher.answers(bench.teacher.get("/api/cells/{id}/readings", cell), ReadingAnswer.class);
    }

    /** As a device sends it: no cookie, no CSRF token. */
    MockMvcTester.MockMvcRequestBuilder posting() {
        return server.method(HttpMethod.POST).uri("/api/logger/readings").contentType(MediaType.APPLICATION_JSON);
    }

    MvcTestResult send(@Nullable String token, String reading) {
        return posting()
                .header("Authorization", "Bearer " + token)
                .content(reading)
                .exchange();
    }

    Problem refused(MvcTestResult answer, ProblemCode code, int status) {
        assertThat(answer).hasStatus(status);
        return bench.teacher.problem(answer, code);
    }
}
