package org.berrywatt.server.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.PlanRequest.PlanFactor;
import org.berrywatt.contract.PlanRequest.PlanForbidden;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class PlanRefusalsTest {

    private final Planner planner;

    @Autowired
    PlanRefusalsTest(MockMvcTester server, JsonMapper json) {
        planner = new Planner(new Bench(server, json));
    }

    @Test
    void saysInASentenceWhyThereIsNoPlan() {
        var levels = IntStream.range(0, 200)
                .mapToObj(i -> new Typed(String.valueOf(300 + i), "degC"))
                .toList();

        assertThat(planner.teacher()
                        .problem(planner.save(0), ProblemCode.PLAN_NOTHING_VARIED)
                        .detail())
                .isEqualTo("This plan varies nothing. Choose one thing to compare, with at least two levels.");
        assertThat(planner.teacher()
                        .problem(planner.save(0, Planner.sorts("dyeSource", "beetroot")), ProblemCode.PLAN_ONE_LEVEL)
                        .detail())
                .startsWith("Dye from has one level only");
        assertThat(planner.teacher()
                        .problem(
                                planner.save(0, new PlanFactor("bakeTemperature", levels)),
                                ProblemCode.PLAN_TOO_MANY_LEVELS)
                        .detail())
                .startsWith("Bake temperature of the film has 200 levels; a class can compare 6.");
        assertThat(planner.teacher()
                        .problem(
                                planner.save(0, Planner.sorts("dyeSource", "beetroot", "beetroot")),
                                ProblemCode.PLAN_LEVEL_TWICE)
                        .detail())
                .startsWith("Dye from has the same level twice.");
    }

    @Test
    void saysSoWhenEverythingIsForbiddenOrThereIsNoTimeOrTooFewCells() {
        var all = new PlanForbidden(List.of());
        var beetroot = new PlanForbidden(List.of(new BuildValue("dyeSource", "beetroot", null)));

        planner.teacher()
                .problem(
                        planner.save(0, Planner.request(8, 3, 300, List.of(all), Planner.DYE)),
                        ProblemCode.PLAN_EVERYTHING_FORBIDDEN);
        assertThat(planner.teacher()
                        .problem(
                                planner.save(0, Planner.request(8, 3, 300, List.of(beetroot), Planner.DYE)),
                                ProblemCode.PLAN_LEVEL_NEVER_ALLOWED)
                        .detail())
                .contains("“Beetroot”");
        planner.teacher()
                .problem(planner.save(0, Planner.request(8, 3, 0, List.of(), Planner.DYE)), ProblemCode.PLAN_NO_TIME);
        assertThat(planner.teacher()
                        .problem(
                                planner.save(0, Planner.request(4, 1, 300, List.of(), Planner.DYE)),
                                ProblemCode.PLAN_TOO_FEW_CELLS)
                        .detail())
                .contains("4 cells", "takes 5");
    }
}
