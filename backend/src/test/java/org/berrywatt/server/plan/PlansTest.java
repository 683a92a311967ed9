package org.berrywatt.server.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.PlanAnswer;
import org.berrywatt.contract.PlanChangeRequest;
import org.berrywatt.contract.PlanRequest;
import org.berrywatt.contract.PlanRequest.PlanFactor;
import org.berrywatt.contract.PlanRequest.PlanForbidden;
import org.berrywatt.contract.PlanRequest.PlanHeater;
import org.berrywatt.contract.PlannedCellAnswer;
import org.berrywatt.contract.PlannedCellRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class PlansTest {

    private static final PlanFactor DYE = sorts("dyeSource", "blackberry", "beetroot");
    private static final PlanFactor BAKE =
            new PlanFactor("bakeTemperature", List.of(new Typed("350", "degC"), new Typed("450", "degC")));

    private final Bench bench;
    private final Api teacher;

    @Autowired
    PlansTest(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
        teacher = bench.teacher;
    }

    @Test
    void beginsWithoutAPlan() {
        var none = plan(teacher.get("/api/labdays/{id}/plan", day()));

        assertThat(none.version()).isZero();
        assertThat(none.settings()).isNull();
        assertThat(cells(teacher)).isEmpty();
    }

    @Test
    void dealsEveryTeamItsCellsAndSaysWhatTheyCanTell() {
        var plan = plan(save(0, DYE, BAKE));

        assertThat(plan.version()).isEqualTo(1);
        assertThat(plan.cells().stream()
                        .filter(cell -> cell.kind().equals("planned"))
                        .collect(Collectors.groupingBy(PlannedCellAnswer::team, Collectors.counting())))
                .hasSize(8)
                .allSatisfy((team, count) -> assertThat(count).isEqualTo(3));
        assertThat(plan.cells()).extracting(PlannedCellAnswer::label).contains("A1", "H3", "Z1", "Z2");
        assertThat(plan.says()).extracting(PlanAnswer.Sentence::key).contains("plan.says.answers");
        assertThat(figures(plan).factors())
                .extracting(PlanAnswer.FactorFigures::counts)
                .containsOnly(List.of(12, 12));
        assertThat(figures(plan).spreadFrom()).isNotEqualTo("typed");
        assertThat(Objects.requireNonNull(plan.timetable()).slots())
                .extracting(PlanAnswer.Slot::kind)
                .contains("film", "bake", "dyeAndClose", "measure");
        assertThat(plan.needs()).extracting(PlanAnswer.Need::key).contains("glass", "plants", "electrolyte");
        assertThat(plan.hazards()).extracting(PlanAnswer.Hazard::key).contains("hotPlate", "glassEdges");
    }

    @Test
    void givesTheClassACellWithoutDye() {
        var undyed = plan(save(0, DYE)).cells().stream()
                .filter(cell -> cell.kind().equals("undyed"))
                .findFirst()
                .orElseThrow();

        assertThat(undyed.recipe()).contains(new BuildValue("dyeSource", "none", null));
    }

    @Test
    void followsAChangeByHandWithItsFigures() {
        var before = plan(save(0, DYE));
        var cell = before.cells().get(0);
        int other = 1 - cell.levels().get(0);

        var after = plan(change(1, new PlanChangeRequest(cell.label(), "dyeSource", other)));

        assertThat(after.version()).isEqualTo(2);
        assertThat(after.cells().get(0).levels()).containsExactly(other);
        assertThat(after.cells().get(0).byHand()).isTrue();
        assertThat(figures(after).factors().get(0).counts())
                .isNotEqualTo(figures(before).factors().get(0).counts());
    }

    @Test
    void refusesAChangeOfAPlanThatAnotherTeacherChangedMeanwhile() {
        save(0, DYE);
        save(1, DYE, BAKE);

        teacher.problem(save(1, DYE), ProblemCode.EDITED_MEANWHILE);
        teacher.problem(change(1, new PlanChangeRequest("A1", "dyeSource", 0)), ProblemCode.EDITED_MEANWHILE);
    }

    @Test
    void savesOnceHoweverOftenSent() {
        var id = UUID.randomUUID();
        var first = plan(teacher.put(request(DYE), "/api/labdays/{day}/plan/versions/{id}", day(), id));

        var again = plan(teacher.put(request(DYE), "/api/labdays/{day}/plan/versions/{id}", day(), id));

        assertThat(again).isEqualTo(first);
    }

    @Test
    void saysInASentenceWhyThereIsNoPlan() {
        var levels = IntStream.range(0, 200)
                .mapToObj(i -> new Typed(String.valueOf(300 + i), "degC"))
                .toList();

        assertThat(teacher.problem(save(0), ProblemCode.PLAN_NOTHING_VARIED).detail())
                .isEqualTo("This plan varies nothing. Choose one thing to compare, with at least two levels.");
        assertThat(teacher.problem(save(0, sorts("dyeSource", "beetroot")), ProblemCode.PLAN_ONE_LEVEL)
                        .detail())
                .startsWith("Dye from has one level only");
        assertThat(teacher.problem(save(0, new PlanFactor("bakeTemperature", levels)), ProblemCode.PLAN_TOO_MANY_LEVELS)
                        .detail())
                .startsWith("Bake temperature of the film has 200 levels; a class can compare 6.");
        assertThat(teacher.problem(save(0, sorts("dyeSource", "beetroot", "beetroot")), ProblemCode.PLAN_LEVEL_TWICE)
                        .detail())
                .startsWith("Dye from has the same level twice.");
    }

    @Test
    void saysSoWhenEverythingIsForbiddenOrThereIsNoTimeOrTooFewCells() {
        var all = new PlanForbidden(List.of());
        var beetroot = new PlanForbidden(List.of(new BuildValue("dyeSource", "beetroot", null)));

        teacher.problem(save(0, request(8, 3, 300, List.of(all), DYE)), ProblemCode.PLAN_EVERYTHING_FORBIDDEN);
        assertThat(teacher.problem(
                                save(0, request(8, 3, 300, List.of(beetroot), DYE)),
                                ProblemCode.PLAN_LEVEL_NEVER_ALLOWED)
                        .detail())
                .contains("“Beetroot”");
        teacher.problem(save(0, request(8, 3, 0, List.of(), DYE)), ProblemCode.PLAN_NO_TIME);
        assertThat(teacher.problem(save(0, request(4, 1, 300, List.of(), DYE)), ProblemCode.PLAN_TOO_FEW_CELLS)
                        .detail())
                .contains("4 cells", "takes 5");
    }

    @Test
    void takesAOneTeamPlanAndSaysWhatItIsWorth() {
        var plan = plan(save(0, request(1, 6, 300, List.of(), DYE)));

        assertThat(plan.says()).extracting(PlanAnswer.Sentence::key).contains("plan.says.oneTeam");
    }

    @Test
    void variesSomethingThatTheCatalogueDoesNotKnow() {
        var plan = plan(save(0, sorts("Music while grinding", "loud", "none")));

        assertThat(plan.cells().get(0).recipe())
                .extracting(BuildValue::parameter)
                .contains("Music while grinding");
        assertThat(figures(plan).factors().get(0).parameter()).isEqualTo("Music while grinding");
    }

    @Test
    void tellsTeamsTheirOwnCellsAndRecordsWhatTheyBuiltOtherwise() {
        save(0, DYE, BAKE);
        var sloe = bench.team("Sloe");
        var own = cells(sloe);
        var planned = own.get(0);
        var otherDye = planned.levels().get(0) == 0 ? "beetroot" : "blackberry";
        var id = UUID.randomUUID();
        var recipe = List.of(new BuildValue("dyeSource", otherDye, null), new BuildValue("bakeTime", "30", "min"));
        assertThat(sloe.put(
                        new CellRequest(Bench.teamId(sloe), "mine", recipe, null, Bench.NOTICED),
                        "/api/cells/{id}",
                        id))
                .hasStatusOk();

        assertThat(sloe.put(new PlannedCellRequest(id, planned.label()), "/api/planned-cells/{id}", UUID.randomUUID()))
                .hasStatusOk();

        assertThat(own)
                .hasSize(3)
                .allSatisfy(cell -> assertThat(cell.teamName()).isEqualTo("Sloe"));
        var made = cells(teacher).get(0);
        assertThat(made.cellId()).isEqualTo(id);
        assertThat(made.deviations())
                .extracting(deviation -> deviation.made().text())
                .containsExactly(otherDye);
    }

    @Test
    void believesTheLatestWordAboutACell() {
        save(0, DYE);
        var sloe = bench.team("Sloe");
        var cell = bench.cell(sloe, "C1");
        for (var label : List.of("A1", "A2")) {
            sloe.put(new PlannedCellRequest(cell, label), "/api/planned-cells/{id}", UUID.randomUUID());
        }

        assertThat(cells(sloe).stream().filter(each -> each.cellId() != null))
                .extracting(PlannedCellAnswer::label)
                .containsExactly("A2");
        sloe.problem(
                sloe.put(new PlannedCellRequest(cell, "X9"), "/api/planned-cells/{id}", UUID.randomUUID()),
                ProblemCode.PLAN_MISSING);
    }

    private static PlanAnswer.Figures figures(PlanAnswer plan) {
        return Objects.requireNonNull(plan.figures());
    }

    private PlanAnswer plan(MvcTestResult result) {
        return teacher.answer(result, PlanAnswer.class);
    }

    private List<PlannedCellAnswer> cells(Api by) {
        return by.answers(by.get("/api/labdays/{id}/plan/cells", day()), PlannedCellAnswer.class);
    }

    private MvcTestResult save(int seen, PlanFactor... factors) {
        return save(seen, request(factors));
    }

    private MvcTestResult save(int seen, PlanRequest request) {
        return teacher.putIfMatch(
                "\"" + seen + "\"", request, "/api/labdays/{day}/plan/versions/{id}", day(), UUID.randomUUID());
    }

    private MvcTestResult change(int seen, PlanChangeRequest request) {
        return teacher.putIfMatch(
                "\"" + seen + "\"", request, "/api/labdays/{day}/plan/changes/{id}", day(), UUID.randomUUID());
    }

    private static PlanRequest request(PlanFactor... factors) {
        return request(8, 3, 300, List.of(), factors);
    }

    private static PlanRequest request(
            int teams, int cells, int minutes, List<PlanForbidden> forbidden, PlanFactor... factors) {
        return new PlanRequest(
                teams,
                cells,
                List.of(factors),
                List.of(new BuildValue("bakeTime", "30", "min")),
                forbidden,
                List.of(new PlanHeater("Plate A", 12), new PlanHeater("Plate B", 12)),
                4,
                minutes,
                2,
                null,
                true,
                true,
                25,
                7L);
    }

    private static PlanFactor sorts(String parameter, String... levels) {
        return new PlanFactor(
                parameter,
                List.of(levels).stream().map(level -> new Typed(level, null)).toList());
    }

    private UUID day() {
        return bench.day.id();
    }
}
