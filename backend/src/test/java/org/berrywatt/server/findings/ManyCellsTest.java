package org.berrywatt.server.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.awaitility.Awaitility.await;

import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.berrywatt.contract.EntryRequest;
import org.berrywatt.contract.FindingsAnswer;
import org.berrywatt.contract.FindingsDaysRequest;
import org.berrywatt.contract.FindingsRunAnswer;
import org.berrywatt.contract.FindingsTableRequest;
import org.berrywatt.contract.ParameterAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** Many cells as a teacher's browser asks for them. */
@ServerTest
class ManyCellsTest {

    /** Ten teams with a cell of each dye, hibiscus three times as good. */
    private static final String CSV = IntStream.range(0, 20)
            .mapToObj(i -> "team " + i / 2 + (i % 2 == 0 ? ",hibiscus," + (30 + i) : ",sloe," + (10 + i / 2)))
            .collect(Collectors.joining("\n", "team,dye,power\n", "\n"));

    private final Bench bench;
    private final Api teacher;

    @Autowired
    ManyCellsTest(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
        teacher = bench.teacher;
    }

    @Test
    void comparesTheCellsOfAFile() {
        var found = answer(started("/api/findings/table", table(null)));

        assertThat(found.outcome()).isEqualTo("power");
        assertThat(found.all()).isEqualTo(20);
        assertThat(found.study().parameters())
                .extracting(ParameterAnswer::parameter, ParameterAnswer::strength)
                .containsExactly(tuple("dye", "clear"));
    }

    @Test
    void filtersTheCellsOfAFile() {
        var found = answer(started("/api/findings/table", table(List.of("team\tteam 0", "team\tteam 1"))));

        assertThat(found.looked()).isEqualTo(4);
        assertThat(found.leftOut()).hasSize(16);
    }

    @Test
    void comparesTheCellsOfADay() {
        bench.cell(bench.team("Sloe"), "C1");

        var found = answer(
                started("/api/findings/days", new FindingsDaysRequest(List.of(bench.day.id()), "power", List.of())));

        assertThat(found.cells()).extracting(FindingsAnswer.Dot::label).contains("C1");
        assertThat(found.cells().get(0).day()).isEqualTo(bench.day.title());
    }

    @Test
    void keepsAnEndWhenItIsOverAlready() {
        var run = started("/api/findings/table", table(null));
        answer(run);

        var ended = teacher.answer(
                teacher.put(new EntryRequest(false), "/api/findings/runs/{id}/end", run.id()), FindingsRunAnswer.class);

        assertThat(ended.state()).isEqualTo("done");
    }

    @Test
    void refusesWhatCannotBeCompared() {
        teacher.problem(
                teacher.post(new FindingsDaysRequest(List.of(UUID.randomUUID()), "power", null), "/api/findings/days"),
                ProblemCode.NOT_FOUND);
        teacher.problem(
                teacher.post(new FindingsDaysRequest(List.of(bench.day.id()), "beauty", null), "/api/findings/days"),
                ProblemCode.CHOICE_UNKNOWN);
    }

    private static FindingsTableRequest table(@Nullable List<String> only) {
        return new FindingsTableRequest(CSV, "power", null, "team", null, only);
    }

    private FindingsRunAnswer started(String door, Object request) {
        return teacher.answer(teacher.post(request, door), FindingsRunAnswer.class);
    }

    private FindingsAnswer answer(FindingsRunAnswer run) {
        await().until(() -> progress(run.id()).equals("done"));
        return teacher.answer(teacher.get("/api/findings/runs/{id}/answer", run.id()), FindingsAnswer.class);
    }

    private String progress(UUID id) {
        return teacher.answer(teacher.get("/api/findings/runs/{id}", id), FindingsRunAnswer.class)
                .state();
    }
}
