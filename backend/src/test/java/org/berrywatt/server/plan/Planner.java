package org.berrywatt.server.plan;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.PlanAnswer;
import org.berrywatt.contract.PlanChangeRequest;
import org.berrywatt.contract.PlanRequest;
import org.berrywatt.contract.PlanRequest.PlanFactor;
import org.berrywatt.contract.PlanRequest.PlanForbidden;
import org.berrywatt.contract.PlanRequest.PlanHeater;
import org.berrywatt.contract.PlannedCellAnswer;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** A teacher who plans a day. */
record Planner(Bench bench) {

    static final PlanFactor DYE = sorts("dyeSource", "blackberry", "beetroot");
    static final PlanFactor BAKE =
            new PlanFactor("bakeTemperature", List.of(new Typed("350", "degC"), new Typed("450", "degC")));

    static PlanAnswer.Figures figures(PlanAnswer plan) {
        return Objects.requireNonNull(plan.figures());
    }

    PlanAnswer plan(MvcTestResult result) {
        return teacher().answer(result, PlanAnswer.class);
    }

    List<PlannedCellAnswer> cells(Api by) {
        return by.answers(by.get("/api/labdays/{id}/plan/cells", day()), PlannedCellAnswer.class);
    }

    MvcTestResult save(int seen, PlanFactor... factors) {
        return save(seen, request(factors));
    }

    MvcTestResult save(int seen, PlanRequest request) {
        return teacher()
                .putIfMatch(
                        "\"" + seen + "\"", request, "/api/labdays/{day}/plan/versions/{id}", day(), UUID.randomUUID());
    }

    MvcTestResult change(int seen, PlanChangeRequest request) {
        return teacher()
                .putIfMatch(
                        "\"" + seen + "\"", request, "/api/labdays/{day}/plan/changes/{id}", day(), UUID.randomUUID());
    }

    static PlanRequest request(PlanFactor... factors) {
        return request(8, 3, 300, List.of(), factors);
    }

    static PlanRequest request(
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

    static PlanFactor sorts(String parameter, String... levels) {
        return new PlanFactor(
                parameter,
                List.of(levels).stream().map(level -> new Typed(level, null)).toList());
    }

    Api teacher() {
        return bench.teacher;
    }

    UUID day() {
        return bench.day.id();
    }
}
