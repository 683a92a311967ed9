package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.access.Teachers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

/** Who may do what: nobody, a team of another day, another team of the day, the cell's own team, the teacher. */
@ServerTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PermissionsTest {

    static final String DOORS = """
            GET  /api/labdays,                                  401, 403, 403, 403, 200
            GET  /api/labdays/{id},                             401, 403, 200, 200, 200
            PUT  /api/labdays/{id},                             401, 403, 403, 403, 200
            PUT  /api/labdays/{id} (edit),                      401, 403, 403, 403, 200
            PUT  /api/labdays/{id}/entry,                       401, 403, 403, 403, 200
            PUT  /api/labdays/{id}/final,                       401, 403, 403, 403, 200
            PUT  /api/labdays/{id}/retention,                   401, 403, 403, 403, 200
            GET  /api/labdays/{id}/archive,                     401, 403, 403, 403, 200
            POST /api/archives,                                 401, 403, 403, 403, 422
            POST /api/labdays/{id}/removal,                     401, 403, 403, 403, 422
            GET  /api/paper,                                    401, 403, 403, 403, 200
            GET  /api/paper/{table}.csv,                        401, 403, 403, 403, 200
            POST /api/labdays/{id}/paper,                       401, 403, 403, 403, 200
            POST /api/labdays/{labDayId}/loggers,               401, 403, 403, 403, 200
            GET  /api/labdays/{labDayId}/loggers,               401, 403, 403, 403, 200
            PUT  /api/loggers/{id}/revocation,                  401, 403, 403, 403, 404
            GET  /api/labdays/{id}/link.svg,                    401, 403, 403, 403, 200
            GET  /api/labdays/{id}/desk,                        401, 403, 403, 403, 200
            PUT  /api/labdays/{id}/desk/put-off,                401, 403, 403, 403, 200
            GET  /api/labdays/{id}/findings,                    401, 403, 200, 200, 200
            GET  /api/labdays/{id}/curves,                      401, 403, 200, 200, 200
            POST /api/findings/days,                            401, 403, 403, 403, 422
            POST /api/findings/table,                           401, 403, 403, 403, 422
            POST /api/findings/table/look,                      401, 403, 403, 403, 200
            GET  /api/findings/runs/{id},                       401, 403, 403, 403, 404
            GET  /api/findings/runs/{id}/answer,                401, 403, 403, 403, 404
            PUT  /api/findings/runs/{id}/end,                   401, 403, 403, 403, 404
            GET  /api/labdays/{id}/report,                      401, 403, 403, 403, 200
            PUT  /api/team-comments/{id},                       401, 403, 403, 403, 200
            GET  /api/labdays/{id}/leaderboard,                 200, 200, 200, 200, 200
            GET  /api/labdays/{id}/room,                        200, 200, 200, 200, 200
            GET  /api/labdays/{labDayId}/teams,                 401, 403, 200, 200, 200
            PUT  /api/teams/{id},                               401, 403, 403, 403, 200
            PUT  /api/teams/{id}/name,                          401, 403, 403, 403, 200
            PUT  /api/teams/{id}/merger,                        401, 403, 403, 403, 200
            PUT  /api/team-codes/{id},                          401, 403, 403, 403, 200
            GET  /api/teams/{id}/link.svg,                      401, 403, 403, 200, 200
            GET  /api/labdays/{labDayId}/plan,                  401, 403, 403, 403, 200
            GET  /api/labdays/{labDayId}/plan/cells,            401, 403, 200, 200, 200
            PUT  /api/labdays/{labDayId}/plan/versions/{id},    401, 403, 403, 403, 422
            PUT  /api/labdays/{labDayId}/plan/changes/{id},     401, 403, 403, 403, 409
            PUT  /api/planned-cells/{id},                       401, 403, 403, 200, 200
            PUT  /api/cells/{id},                               401, 403, 403, 200, 200
            GET  /api/cells/{id},                               401, 403, 403, 200, 200
            GET  /api/labdays/{labDayId}/cells,                 401, 403, 200, 200, 200
            PUT  /api/cells/{cellId}/sheets/{sheetId},          401, 403, 403, 200, 409
            PUT  /api/outcomes/{id},                            401, 403, 403, 200, 200
            PUT  /api/cell-events/{id},                         401, 403, 403, 200, 200
            PUT  /api/readings/{id},                            401, 403, 403, 200, 200
            GET  /api/cells/{cellId}/readings,                  401, 403, 403, 200, 200
            PUT  /api/set-asides/{id},                          401, 403, 403, 403, 200
            GET  /api/cells/{id}/result,                        401, 403, 403, 200, 200
            GET  /api/cells/{id}/settling,                      401, 403, 403, 200, 200
            PUT  /api/stations/{id},                            401, 403, 403, 403, 200
            GET  /api/labdays/{labDayId}/stations,              401, 403, 200, 200, 200
            PUT  /api/stations/{stationId}/corrections/{id},    401, 403, 403, 403, 200
            POST /api/stations/{id}/corrections/preview,        401, 403, 403, 403, 200
            PUT  /api/stations/{stationId}/spectra/{id},        401, 403, 403, 403, 200
            POST /api/stations/{id}/spectra/preview,            401, 403, 403, 403, 200
            PUT  /api/light-set-asides/{id},                    401, 403, 403, 403, 404
            POST /api/light-set-asides/preview,                 401, 403, 403, 403, 404
            PUT  /api/irradiances/{id},                         401, 403, 403, 403, 200
            POST /api/irradiances/{id}/preview,                 401, 403, 403, 403, 404
            GET  /api/stations/{id}/cells,                      401, 403, 403, 403, 200
            PUT  /api/grids/{id},                               401, 403, 403, 403, 200
            PUT  /api/labdays/{labDayId}/control-cell,          401, 403, 403, 403, 200
            GET  /api/labdays/{labDayId}/control-cell,          401, 403, 200, 200, 200
            PUT  /api/sign-offs/{id},                           401, 403, 403, 403, 200
            PUT  /api/sign-offs/{id}/withdrawal,                401, 403, 403, 403, 200
            GET  /api/labdays/{labDayId}/sign-offs,             401, 403, 200, 200, 200
            PUT  /api/incidents/{id},                           401, 403, 403, 403, 200
            PUT  /api/incidents/{id}/look,                      401, 403, 403, 403, 200
            GET  /api/labdays/{labDayId}/incidents,             401, 403, 403, 403, 200
            GET  /api/labdays/{labDayId}/lesson,                401, 403, 200, 200, 200
            PUT  /api/announcements/{id},                       401, 403, 403, 403, 200
            PUT  /api/announcements/{id}/end,                   401, 403, 403, 403, 200
            PUT  /api/timers/{id},                              401, 403, 403, 403, 200
            PUT  /api/timers/{id}/extensions/{extensionId},     401, 403, 403, 403, 200
            PUT  /api/timers/{id}/end,                          401, 403, 403, 403, 200
            PUT  /api/heater-slots/{id},                        401, 403, 403, 200, 409
            PUT  /api/heater-outs/{id},                         401, 403, 403, 200, 200
            PUT  /api/phones/{id},                              401, 200, 200, 200, 403
            GET  /api/labdays/{labDayId}/phones,                401, 403, 403, 403, 200
            GET  /api/safety,                                   200, 200, 200, 200, 200
            GET  /api/catalogue,                                200, 200, 200, 200, 200
            GET  /api/addresses,                                200, 200, 200, 200, 200
            GET  /api/problems/{code},                          200, 200, 200, 200, 200
            GET  /api/access,                                   200, 200, 200, 200, 200
            POST /api/access/setup,                             409, 409, 409, 409, 409
            POST /api/access/sign-in,                           200, 200, 200, 200, 200
            PUT  /api/access/password,                          401, 403, 403, 403, 422
            POST /api/access/new-password,                      422, 422, 422, 422, 422
            GET  /api/access/browsers,                          401, 403, 403, 403, 200
            POST /api/access/sign-out-elsewhere,                401, 403, 403, 403, 422
            POST /api/access/sign-out,                          200, 200, 200, 200, 200
            POST /api/access/join,                              200, 200, 200, 200, 200
            GET  /api/labdays/{id}/tables,                      401, 403, 403, 403, 200
            GET  /api/labdays/{id}/tables.zip,                  401, 403, 403, 403, 200
            GET  /api/labdays/{id}/tables/{name}.csv,           401, 403, 403, 403, 200
            POST /api/calculations/curve,                       422, 422, 422, 422, 422
            POST /api/calculations/diode,                       422, 422, 422, 422, 422
            POST /api/calculations/findings,                    422, 422, 422, 422, 422
            POST /api/calculations/leaderboard,                 422, 422, 422, 422, 422
            POST /api/calculations/light,                       422, 422, 422, 422, 422
            POST /api/calculations/normalisation,               422, 422, 422, 422, 422
            POST /api/calculations/uncertainty,                 422, 422, 422, 422, 422
            POST /api/calculations/yield,                       422, 422, 422, 422, 422
            """;

    /** All but the door of devices, which has tests of its own; what a browser shows after a failure is no door. */
    private static final String DOOR = "[A-Z]+ /api/(?!logger/).*";

    private static final Path WRITTEN = Path.of("target/permissions.md");

    private final Api own;
    private final List<Api> callers;
    private final Api otherTeacher;
    private final Map<String, Function<Api, MvcTestResult>> doors;

    @Autowired
    PermissionsTest(MockMvcTester server, JsonMapper json, Teachers teachers) {
        var bench = new Bench(server, json);
        own = bench.team("Sloe");
        doors = new HashMap<>(new Doors(bench, own).all());
        doors.putAll(new EntranceDoors(bench, own, teachers).all());
        var otherDay = new Bench(server, json).team("Hawthorn");
        callers = List.of(own.asNobody(), otherDay, bench.team("Elder"), own, bench.teacher);
        otherTeacher = bench.teacher.as(new Caller.Teacher(UUID.randomUUID(), "Mr Rowan"));
    }

    @ParameterizedTest(name = "{0}: nobody {1}, other day {2}, other team {3}, own team {4}, teacher {5}")
    @CsvSource(textBlock = DOORS)
    void opensEachDoorToThoseItIsFor(String door, int nobody, int otherDay, int otherTeam, int ownTeam, int teacher) {
        var statuses = callers.stream()
                .map(open(door))
                .peek(this::assertSaysNothingMore)
                .map(answer -> answer.getResponse().getStatus())
                .toList();
        assertThat(statuses).containsExactly(nobody, otherDay, otherTeam, ownTeam, teacher);
        assertThat(isTurnedAway(open(door).apply(otherTeacher).getResponse().getStatus()))
                .as("another teacher")
                .isEqualTo(isTurnedAway(teacher));
    }

    private static boolean isTurnedAway(int status) {
        return status == 401 || status == 403;
    }

    private Function<Api, MvcTestResult> open(String door) {
        return Objects.requireNonNull(doors.get(name(door)));
    }

    @Test
    void showsTheServersMetricsToTeachersOnly() {
        assertThat(callers.stream()
                        .map(by -> by.get("/actuator/metrics").getResponse().getStatus()))
                .containsExactly(401, 403, 403, 403, 200);
    }

    @Test
    void isTheDocumentThatIsKept() throws IOException {
        Files.writeString(WRITTEN, PermissionsDocument.text());
        assertThat(Path.of("../docs/permissions.md"))
                .as("what deploy/api.sh writes")
                .content()
                .isEqualTo(PermissionsDocument.text());
    }

    @Test
    void knowsEveryDoorThatTheServerDescribes() {
        assertThat(described()).isEqualTo(listed());
    }

    private static Set<String> listed() {
        return DOORS.lines()
                .map(line -> operation(line.substring(0, line.indexOf(','))))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private Set<String> described() {
        var paths = own.json()
                .readTree(own.asNobody().get("/v3/api-docs").getResponse().getContentAsByteArray())
                .get("paths");
        return paths.properties().stream()
                .flatMap(path -> operations(path.getKey(), path.getValue().propertyNames()))
                .filter(operation -> operation.matches(DOOR))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Stream<String> operations(String path, Collection<String> methods) {
        return methods.stream().map(method -> method.toUpperCase(Locale.ROOT) + " " + path);
    }

    private static String name(String door) {
        return door.replaceAll(" +", " ");
    }

    /** What a door is called in the description: without what tells two uses of it apart. */
    private static String operation(String door) {
        return name(door).replaceAll(" \\(.*", "");
    }

    private void assertSaysNothingMore(MvcTestResult answer) {
        switch (answer.getResponse().getStatus()) {
            case 401 -> own.problem(answer, ProblemCode.SIGN_IN_NEEDED);
            case 403 ->
                assertThat(own.problem(answer, ProblemCode.NOT_ALLOWED).value()).isNull();
            default -> assertThat(answer.getUnresolvedException()).isNull();
        }
    }
}
