package org.berrywatt.server.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.PlanAnswer;
import org.berrywatt.contract.PlanChangeRequest;
import org.berrywatt.contract.PlannedCellAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class PlansTest {

    private final Planner planner;

    @Autowired
    PlansTest(MockMvcTester server, JsonMapper json) {
        planner = new Planner(new Bench(server, json));
    }

    @Test
    void beginsWithoutAPlan() {
        var none = planner.plan(planner.teacher().get("/api/labdays/{id}/plan", planner.day()));

        assertThat(none.version()).isZero();
        assertThat(none.settings()).isNull();
        assertThat(planner.cells(planner.teacher())).isEmpty();
    }

    @Test
    void dealsEveryTeamItsCellsAndSaysWhatTheyCanTell() {
        var plan = planner.plan(planner.save(0, Planner.DYE, Planner.BAKE));

        assertThat(plan.version()).isEqualTo(1);
        assertThat(plan.cells().stream()
                        .filter(cell -> cell.kind().equals("planned"))
                        .collect(Collectors.groupingBy(PlannedCellAnswer::team, Collectors.counting())))
                .hasSize(8)
                .allSatisfy((team, count) -> assertThat(count).isEqualTo(3));
        assertThat(plan.cells()).extracting(PlannedCellAnswer::label).contains("A1", "H3", "Z1", "Z2");
        assertThat(plan.says()).extracting(PlanAnswer.Sentence::key).contains("plan.says.answers");
        assertThat(Planner.figures(plan).factors())
                .extracting(PlanAnswer.FactorFigures::counts)
                .containsOnly(List.of(12, 12));
        assertThat(Planner.figures(plan).spreadFrom()).isNotEqualTo("typed");
        assertThat(Objects.requireNonNull(plan.timetable()).slots())
                .extracting(PlanAnswer.Slot::kind)
                .contains("film", "bake", "dyeAndClose", "measure");
        assertThat(plan.needs()).extracting(PlanAnswer.Need::key).contains("glass", "plants", "electrolyte");
        assertThat(plan.hazards()).extracting(PlanAnswer.Hazard::key).contains("hotPlate", "glassEdges");
    }

    @Test
    void givesTheClassACellWithoutDye() {
        var undyed = planner.plan(planner.save(0, Planner.DYE)).cells().stream()
                .filter(cell -> cell.kind().equals("undyed"))
                .findFirst()
                .orElseThrow();

        assertThat(undyed.recipe()).contains(new BuildValue("dyeSource", "none", null));
    }

    @Test
    void followsAChangeByHandWithItsFigures() {
        var before = planner.plan(planner.save(0, Planner.DYE));
        var cell = before.cells().get(0);
        int other = 1 - cell.levels().get(0);

        var after = planner.plan(planner.change(1, new PlanChangeRequest(cell.label(), "dyeSource", other)));

        assertThat(after.version()).isEqualTo(2);
        assertThat(after.cells().get(0).levels()).containsExactly(other);
        assertThat(after.cells().get(0).byHand()).isTrue();
        assertThat(Planner.figures(after).factors().get(0).counts())
                .isNotEqualTo(Planner.figures(before).factors().get(0).counts());
    }

    @Test
    void refusesAChangeOfAPlanThatAnotherTeacherChangedMeanwhile() {
        planner.save(0, Planner.DYE);
        planner.save(1, Planner.DYE, Planner.BAKE);

        planner.teacher().problem(planner.save(1, Planner.DYE), ProblemCode.EDITED_MEANWHILE);
        planner.teacher()
                .problem(planner.change(1, new PlanChangeRequest("A1", "dyeSource", 0)), ProblemCode.EDITED_MEANWHILE);
    }

    @Test
    void savesOnceHoweverOftenSent() {
        var id = UUID.randomUUID();
        var first = planner.plan(planner.teacher()
                .put(Planner.request(Planner.DYE), "/api/labdays/{day}/plan/versions/{id}", planner.day(), id));

        var again = planner.plan(planner.teacher()
                .put(Planner.request(Planner.DYE), "/api/labdays/{day}/plan/versions/{id}", planner.day(), id));

        assertThat(again).isEqualTo(first);
    }

    @Test
    void takesAOneTeamPlanAndSaysWhatItIsWorth() {
        var plan = planner.plan(planner.save(0, Planner.request(1, 6, 300, List.of(), Planner.DYE)));

        assertThat(plan.says()).extracting(PlanAnswer.Sentence::key).contains("plan.says.oneTeam");
    }

    @Test
    void variesSomethingThatTheCatalogueDoesNotKnow() {
        var plan = planner.plan(planner.save(0, Planner.sorts("Music while grinding", "loud", "none")));

        assertThat(plan.cells().get(0).recipe())
                .extracting(BuildValue::parameter)
                .contains("Music while grinding");
        assertThat(Planner.figures(plan).factors().get(0).parameter()).isEqualTo("Music while grinding");
    }
}
