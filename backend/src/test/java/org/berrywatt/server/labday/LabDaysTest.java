package org.berrywatt.server.labday;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.FinalRequest;
import org.berrywatt.contract.LabDayAnswer;
import org.berrywatt.contract.LabDayRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.RetentionRequest;
import org.berrywatt.contract.Typed;
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
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

@ServerTest
class LabDaysTest {

    private static final String DAY = "/api/labdays/{id}";
    private final Bench bench;
    private final Api teacher;
    private final JdbcClient database;

    @Autowired
    LabDaysTest(MockMvcTester server, JsonMapper json, JdbcClient database) {
        this.bench = new Bench(server, json);
        this.teacher = bench.teacher;
        this.database = database;
    }

    @Test
    void createsADayOnceHoweverOftenItIsSent() {
        var id = UUID.randomUUID();
        var first = teacher.answer(teacher.put(Bench.dayRequest("Twice"), DAY, id), LabDayAnswer.class);
        assertThat(teacher.answer(teacher.put(Bench.dayRequest("Twice"), DAY, id), LabDayAnswer.class))
                .isEqualTo(first);
        assertThat(first.entryOpen()).isTrue();
        assertThat(first.referenceAreaCm2()).isEqualTo(1);
        assertThat(first.code()).matches("[ACDEFGHJKMNPQRTVWXY34679]{6}");
    }

    @Test
    void refusesAnotherDayUnderTheSameId() {
        teacher.problem(teacher.put(Bench.dayRequest("Another"), DAY, bench.day.id()), ProblemCode.ID_REUSED);
    }

    @Test
    void editsADayThatTheTeacherHasSeenAndKeepsWhatItWas() {
        var edited = teacher.answer(
                teacher.putIfMatch(tag(bench.day.version()), Bench.dayRequest("New title"), DAY, bench.day.id()),
                LabDayAnswer.class);
        assertThat(edited.title()).isEqualTo("New title");
        assertThat(edited.version()).isEqualTo(bench.day.version() + 1);
        assertThat(titlesKept())
                .containsExactly(
                        "Berry day by " + teacher.caller().signature(),
                        "New title by " + teacher.caller().signature());
    }

    @Test
    void refusesAnEditOfADayThatSomebodyElseEditedMeanwhile() {
        teacher.putIfMatch(tag(bench.day.version()), Bench.dayRequest("First"), DAY, bench.day.id());
        var refused = teacher.putIfMatch(tag(bench.day.version()), Bench.dayRequest("Second"), DAY, bench.day.id());
        assertThat(refused).hasStatus(412);
        teacher.problem(refused, ProblemCode.EDITED_MEANWHILE);
    }

    @Test
    void answersAnEditThatIsSentAgain() {
        teacher.putIfMatch(tag(bench.day.version()), Bench.dayRequest("Once"), DAY, bench.day.id());
        assertThat(teacher.putIfMatch(tag(bench.day.version()), Bench.dayRequest("Once"), DAY, bench.day.id()))
                .hasStatusOk();
        assertThat(titlesKept()).hasSize(2);
    }

    @Test
    void refusesATagThatIsNotOneOfOurs() {
        var refused = teacher.putIfMatch("\"maple\"", Bench.dayRequest("Second"), DAY, bench.day.id());
        teacher.problem(refused, ProblemCode.EDITED_MEANWHILE);
    }

    @Test
    void closesAndOpensADayAndTellsItsVersion() {
        bench.setEntry(false);
        var closed = teacher.get(DAY, bench.day.id());
        assertThat(closed).hasHeader("ETag", tag(bench.day.version() + 1));
        assertThat(teacher.answer(closed, LabDayAnswer.class).entryOpen()).isFalse();
        bench.setEntry(true);
        assertThat(teacher.answer(teacher.get(DAY, bench.day.id()), LabDayAnswer.class)
                        .entryOpen())
                .isTrue();
    }

    @Test
    void remembersUntilWhenADayIsKeptAlsoOnceItIsFinal() {
        teacher.put(new FinalRequest(true, null), DAY + "/final", bench.day.id());
        var kept = teacher.answer(keep(LocalDate.of(2027, 7, 31)), LabDayAnswer.class);
        assertThat(kept.keepUntil()).isEqualTo("2027-07-31");
        assertThat(teacher.answer(keep(null), LabDayAnswer.class).keepUntil()).isNull();
    }

    @Test
    void keepsNoDayShorterThanUntilItself() {
        var problem = teacher.problem(keep(LocalDate.of(2026, 11, 24)), ProblemCode.LABDAY_KEPT_TOO_SHORT);
        assertThat(problem.field()).isEqualTo("keepUntil");
        assertThat(problem.detail()).contains("2026-11-24", "2026-11-25");
    }

    @Test
    void refusesToKeepADayUntilAYearThatIsASlip() {
        var problem = teacher.problem(keep(LocalDate.of(20266, 11, 24)), ProblemCode.DATE_OUT_OF_RANGE);
        assertThat(problem.field()).isEqualTo("keepUntil");
        assertThat(problem.limit()).isEqualTo("[2000, 2199]");
    }

    private MvcTestResult keep(@Nullable LocalDate until) {
        return teacher.put(new RetentionRequest(until), DAY + "/retention", bench.day.id());
    }

    @Test
    void showsTheCodeToTeachersOnly() {
        var team = bench.team("Sloe");
        assertThat(team.answer(team.get(DAY, bench.day.id()), LabDayAnswer.class)
                        .code())
                .isNull();
    }

    @Test
    void listsTheDaysForTeachersOnly() {
        assertThat(teacher.answers(teacher.get("/api/labdays"), LabDayAnswer.class))
                .contains(bench.day);
        var team = bench.team("Sloe");
        team.problem(team.get("/api/labdays"), ProblemCode.NOT_ALLOWED);
    }

    @Test
    void knowsNoDayThatWasNeverCreated() {
        teacher.problem(teacher.get(DAY, UUID.randomUUID()), ProblemCode.NOT_FOUND);
        var absent = teacher.putIfMatch("\"0\"", Bench.dayRequest("Absent"), DAY, UUID.randomUUID());
        teacher.problem(absent, ProblemCode.NOT_FOUND);
    }

    @ParameterizedTest(name = "{0}: {1} is refused with {2} at {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "title               | '\"  \"'                            | text.empty             | “1 to 80”",
                "title               | '\"day\\u202e\"'                    | text.unfit             | day□",
                "referenceIrradiance | '{\"text\":\"abc\",\"unit\":\"Wm2\"}'  | quantity.notANumber    | abc",
                "referenceIrradiance | '{\"text\":\"-100\",\"unit\":\"Wm2\"}' | quantity.impossible    | -100 W/m²",
                "referenceIrradiance | '{\"text\":\"100\",\"unit\":\"lx\"}'   | quantity.wrongUnit     | lx",
                "referenceArea       | '{\"text\":\"-1\",\"unit\":\"cm2\"}'   | quantity.impossible    | -1 cm²",
                "referenceArea       | '{\"text\":\"1 acre\",\"unit\":null}'  | quantity.unknownUnit   | acre",
                "rule                | '\"loudest\"'                       | choice.unknown         | loudest",
                "cellsPerTeam        | 0                                 | quantity.impossible    | 0",
                "cellsPerTeam        | 13                                | quantity.impossible    | 13",
                "date                | null                              | value.missing          | date",
                "rule                | null                              | value.missing          | rule",
            })
    void refusesWhatMakesNoDay(String field, String value, String code, String named) {
        var id = UUID.randomUUID();
        var refused = teacher.put(with(field, value), DAY, id);
        assertThat(refused).hasStatus(422);
        var problem = teacher.problem(refused, code);
        assertThat(problem.field()).isEqualTo(field);
        assertThat(problem.detail() + problem.value() + "“" + problem.limit() + "”")
                .contains(named);
        assertThat(teacher.get(DAY, id)).hasStatus(404);
    }

    @Test
    void refusesADateThatIsNone() {
        teacher.problem(
                teacher.put(with("date", "\"2026-02-30\""), DAY, UUID.randomUUID()), ProblemCode.REQUEST_UNREADABLE);
    }

    @Test
    void takesAReferenceAreaGivenAsTwoSides() {
        var request = new LabDayRequest(
                "Sides",
                bench.day.date(),
                new Typed("10", "mWcm2"),
                new Typed("15 x 20", "mm"),
                "bestVerified",
                12,
                false);
        var day = teacher.answer(teacher.put(request, DAY, UUID.randomUUID()), LabDayAnswer.class);
        assertThat(day.referenceAreaCm2()).isEqualTo(3);
        assertThat(day.referenceIrradianceWm2()).isEqualTo(100);
    }

    private String with(String field, String value) {
        var body = (ObjectNode) teacher.json().valueToTree(Bench.dayRequest("Refused"));
        return body.set(field, teacher.json().readTree(value)).toString();
    }

    private List<String> titlesKept() {
        return database.sql(
                        "select title || ' by ' || written_by from lab_day_edit where lab_day_id = ? order by version")
                .param(bench.day.id())
                .query(String.class)
                .list();
    }

    private static String tag(long version) {
        return "\"" + version + "\"";
    }
}
