package org.berrywatt.server;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.berrywatt.contract.CellEventRequest;
import org.berrywatt.contract.EntryRequest;
import org.berrywatt.contract.FinalRequest;
import org.berrywatt.contract.FindingsDaysRequest;
import org.berrywatt.contract.FindingsTableRequest;
import org.berrywatt.contract.LoggerRequest;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.PaperRequest;
import org.berrywatt.contract.PlanChangeRequest;
import org.berrywatt.contract.PlanRequest;
import org.berrywatt.contract.PlannedCellRequest;
import org.berrywatt.contract.PutOffRequest;
import org.berrywatt.contract.RemovalRequest;
import org.berrywatt.contract.RetentionRequest;
import org.berrywatt.contract.SetAsideRequest;
import org.berrywatt.contract.SheetRequest;
import org.berrywatt.contract.TeamCodeRequest;
import org.berrywatt.contract.TeamCommentRequest;
import org.berrywatt.contract.TeamMergerRequest;
import org.berrywatt.contract.TeamNameRequest;
import org.berrywatt.contract.TeamRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.safety.Zone;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/**
 * A request through each door of the server about one team's day, by the door's name in the OpenAPI description. The team has a
 * cell; what a door needs beyond that is made on the way, by the teacher. One set serves all doors once each, in any order.
 */
final class Doors {

    private final Bench bench;
    private final Api own;
    private final UUID cell;
    private final LightDoors light;
    private final LessonDoors lesson;

    Doors(Bench bench, Api own) {
        this.bench = bench;
        this.own = own;
        cell = bench.cell(own, "C1");
        light = new LightDoors(bench, cell);
        bench.signOff(own, Zone.HEAT);
        lesson = new LessonDoors(bench, own, cell);
    }

    Map<String, Function<Api, MvcTestResult>> all() {
        return Stream.of(
                        ofTheDay(),
                        ofTeams(),
                        ofPlans(),
                        ofManyCells(),
                        ofCells(),
                        light.all(),
                        lesson.all(),
                        ofEverybody())
                .flatMap(doors -> doors.entrySet().stream())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private Map<String, Function<Api, MvcTestResult>> ofTheDay() {
        return Map.ofEntries(
                entry("GET /api/labdays", by -> by.get("/api/labdays")),
                entry("GET /api/labdays/{id}", by -> by.get("/api/labdays/{id}", day())),
                entry("PUT /api/labdays/{id}", by -> by.put(Bench.dayRequest("New"), "/api/labdays/{id}", fresh())),
                entry("PUT /api/labdays/{id} (edit)", this::edit),
                entry(
                        "PUT /api/labdays/{id}/entry",
                        by -> by.put(new EntryRequest(true), "/api/labdays/{id}/entry", day())),
                entry(
                        "PUT /api/labdays/{id}/final",
                        by -> by.put(new FinalRequest(true, null), "/api/labdays/{id}/final", anotherDay())),
                entry(
                        "PUT /api/labdays/{id}/retention",
                        by -> by.put(new RetentionRequest(null), "/api/labdays/{id}/retention", day())),
                entry("GET /api/labdays/{id}/archive", by -> by.get("/api/labdays/{id}/archive", day())),
                entry("POST /api/archives", by -> by.upload(new byte[0], "application/zip", "/api/archives")),
                entry(
                        "POST /api/labdays/{id}/removal",
                        by -> by.post(new RemovalRequest("Another day"), "/api/labdays/{id}/removal", day())),
                entry("GET /api/paper", by -> by.get("/api/paper")),
                entry("GET /api/paper/{table}.csv", by -> by.get("/api/paper/cells.csv")),
                entry("POST /api/labdays/{id}/paper", by -> by.post(paper(), "/api/labdays/{id}/paper", day())),
                entry(
                        "POST /api/labdays/{labDayId}/loggers",
                        by -> by.post(new LoggerRequest("Box", team(), null), "/api/labdays/{id}/loggers", day())),
                entry("GET /api/labdays/{labDayId}/loggers", by -> by.get("/api/labdays/{id}/loggers", day())),
                entry("PUT /api/loggers/{id}/revocation", by -> by.put("", "/api/loggers/{id}/revocation", fresh())),
                entry("GET /api/labdays/{id}/link.svg", by -> by.get("/api/labdays/{id}/link.svg", day())),
                entry("GET /api/labdays/{id}/desk", by -> by.get("/api/labdays/{id}/desk", day())),
                entry(
                        "PUT /api/labdays/{id}/desk/put-off",
                        by -> by.put(new PutOffRequest("quiet.x", 10), "/api/labdays/{id}/desk/put-off", day())),
                entry("GET /api/labdays/{id}/findings", by -> by.get("/api/labdays/{id}/findings", day())),
                entry("GET /api/labdays/{id}/curves", by -> by.get("/api/labdays/{id}/curves", day())),
                entry("GET /api/labdays/{id}/report", by -> by.get("/api/labdays/{id}/report", day())),
                entry(
                        "PUT /api/team-comments/{id}",
                        by -> by.put(new TeamCommentRequest(team(), "Well kept."), "/api/team-comments/{id}", fresh())),
                entry("GET /api/labdays/{id}/leaderboard", by -> by.get("/api/labdays/{id}/leaderboard", day())),
                entry("GET /api/labdays/{id}/room", by -> by.get("/api/labdays/{id}/room", day())));
    }

    private static PaperRequest paper() {
        return new PaperRequest(List.of(new PaperRequest.PaperFile("teams.csv", "team")), "UTC");
    }

    private Map<String, Function<Api, MvcTestResult>> ofTeams() {
        return Map.of(
                "GET /api/labdays/{labDayId}/teams", by -> by.get("/api/labdays/{id}/teams", day()),
                "PUT /api/teams/{id}", by -> by.put(new TeamRequest(day(), null, "Rowan"), "/api/teams/{id}", fresh()),
                "PUT /api/teams/{id}/name",
                        by -> by.put(new TeamNameRequest("Blackthorn"), "/api/teams/{id}/name", team()),
                "PUT /api/teams/{id}/merger", this::merge,
                "PUT /api/team-codes/{id}",
                        by -> by.put(new TeamCodeRequest(team(), false), "/api/team-codes/{id}", fresh()),
                "GET /api/teams/{id}/link.svg", by -> by.get("/api/teams/{id}/link.svg", team()));
    }

    private Map<String, Function<Api, MvcTestResult>> ofPlans() {
        return Map.of(
                "GET /api/labdays/{labDayId}/plan", by -> by.get("/api/labdays/{id}/plan", day()),
                "GET /api/labdays/{labDayId}/plan/cells", by -> by.get("/api/labdays/{id}/plan/cells", day()),
                "PUT /api/labdays/{labDayId}/plan/versions/{id}", this::plan,
                "PUT /api/labdays/{labDayId}/plan/changes/{id}", this::changePlan,
                "PUT /api/planned-cells/{id}",
                        by -> by.put(new PlannedCellRequest(cell, null), "/api/planned-cells/{id}", fresh()));
    }

    /** A look that nobody asked for cannot be found. */
    private Map<String, Function<Api, MvcTestResult>> ofManyCells() {
        var table = new FindingsTableRequest("dye,power", null, null, null, null, null);
        return Map.of(
                "POST /api/findings/days",
                        by -> by.post(new FindingsDaysRequest(List.of(), "power", null), "/api/findings/days"),
                "POST /api/findings/table", by -> by.post(table, "/api/findings/table"),
                "POST /api/findings/table/look", by -> by.post(table, "/api/findings/table/look"),
                "GET /api/findings/runs/{id}", by -> by.get("/api/findings/runs/{id}", fresh()),
                "GET /api/findings/runs/{id}/answer", by -> by.get("/api/findings/runs/{id}/answer", fresh()),
                "PUT /api/findings/runs/{id}/end",
                        by -> by.put(new EntryRequest(true), "/api/findings/runs/{id}/end", fresh()));
    }

    private Map<String, Function<Api, MvcTestResult>> ofCells() {
        return Map.ofEntries(
                entry("PUT /api/cells/{id}", this::registerCell),
                entry("GET /api/cells/{id}", by -> by.get("/api/cells/{id}", cell)),
                entry("GET /api/labdays/{labDayId}/cells", by -> by.get("/api/labdays/{id}/cells", day())),
                entry("PUT /api/cells/{cellId}/sheets/{sheetId}", this::correctSheet),
                entry("PUT /api/outcomes/{id}", this::recordOutcome),
                entry("PUT /api/cell-events/{id}", this::recordRefill),
                entry("PUT /api/readings/{id}", by -> by.put(reading(), "/api/readings/{id}", fresh())),
                entry("GET /api/cells/{cellId}/readings", by -> by.get("/api/cells/{id}/readings", cell)),
                entry("PUT /api/set-asides/{id}", this::setAside),
                entry("GET /api/cells/{id}/result", by -> by.get("/api/cells/{id}/result", cell)),
                entry("GET /api/cells/{id}/settling", by -> by.get("/api/cells/{id}/settling", cell)));
    }

    private Map<String, Function<Api, MvcTestResult>> ofEverybody() {
        return Map.of(
                "GET /api/safety", by -> by.get("/api/safety"),
                "GET /api/catalogue", by -> by.get("/api/catalogue"),
                "GET /api/addresses", by -> by.get("/api/addresses"),
                "GET /api/problems/{code}", by -> by.get("/api/problems/{code}", "labday.closed"));
    }

    private MvcTestResult edit(Api by) {
        var tag = "\"" + bench.day.version() + "\"";
        return by.putIfMatch(tag, Bench.dayRequest("Edited"), "/api/labdays/{id}", anotherDay());
    }

    /** As new as the team's day was, so that nothing changes for the doors that come after. */
    private UUID anotherDay() {
        return bench.made(Bench.dayRequest("Another day"), "/api/labdays/{id}");
    }

    private MvcTestResult merge(Api by) {
        var other = bench.made(
                new TeamRequest(day(), null, "Rowan " + fresh().toString().substring(0, 8)), "/api/teams/{id}");
        return by.put(new TeamMergerRequest(team()), "/api/teams/{id}/merger", other);
    }

    private MvcTestResult plan(Api by) {
        var nothing = new PlanRequest(
                8, 3, List.of(), List.of(), List.of(), List.of(), 1, 60, 2, null, false, false, 25, null);
        return by.put(nothing, "/api/labdays/{day}/plan/versions/{id}", day(), fresh());
    }

    private MvcTestResult changePlan(Api by) {
        var change = new PlanChangeRequest("A1", "dyeSource", 0);
        return by.put(change, "/api/labdays/{day}/plan/changes/{id}", day(), fresh());
    }

    private MvcTestResult registerCell(Api by) {
        var label = by.equals(own) ? "C2" : "C3";
        return by.put(Bench.cellRequest(team(), label), "/api/cells/{id}", fresh());
    }

    private MvcTestResult correctSheet(Api by) {
        var sheet = new SheetRequest(cell, List.of(), null, Bench.NOTICED);
        return by.put(sheet, "/api/cells/{cell}/sheets/{sheet}", cell, fresh());
    }

    private MvcTestResult recordOutcome(Api by) {
        var outcome = new OutcomeRequest(cell, "bake", true, null, null, null, Bench.NOTICED);
        return by.put(outcome, "/api/outcomes/{id}", fresh());
    }

    private MvcTestResult recordRefill(Api by) {
        var refill = new CellEventRequest(cell, "refill", null, Bench.NOTICED);
        return by.put(refill, "/api/cell-events/{id}", fresh());
    }

    private MvcTestResult setAside(Api by) {
        var request = new SetAsideRequest(bench.made(reading(), "/api/readings/{id}"), "The lamp was off");
        return by.put(request, "/api/set-asides/{id}", fresh());
    }

    private Object reading() {
        return Bench.darkRequest(cell, new Typed("3", "mV"));
    }

    private UUID team() {
        return Bench.teamId(own);
    }

    private UUID day() {
        return bench.day.id();
    }

    private static UUID fresh() {
        return UUID.randomUUID();
    }
}
