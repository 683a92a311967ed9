package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.berrywatt.contract.AnnouncementRequest;
import org.berrywatt.contract.CellEventRequest;
import org.berrywatt.contract.ControlCellRequest;
import org.berrywatt.contract.EntryRequest;
import org.berrywatt.contract.GridRequest;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.IncidentRequest;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.LightPreviewRequest;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.PhoneRequest;
import org.berrywatt.contract.PlanChangeRequest;
import org.berrywatt.contract.PlanRequest;
import org.berrywatt.contract.PlannedCellRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SetAsideRequest;
import org.berrywatt.contract.SheetRequest;
import org.berrywatt.contract.SignOffRequest;
import org.berrywatt.contract.SignOffsAnswer;
import org.berrywatt.contract.SpectrumRequest;
import org.berrywatt.contract.StationCorrectionRequest;
import org.berrywatt.contract.StationRequest;
import org.berrywatt.contract.TeamRequest;
import org.berrywatt.contract.TimerRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.safety.Zone;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

/** Who may do what: nobody, a team of another day, another team of the day, the cell's own team, the teacher. */
@ServerTest
class PermissionsTest {

    private final Bench bench;
    private final Api own;
    private final List<Api> callers;
    private final UUID cell;
    private final UUID station;
    private final Map<String, Function<Api, MvcTestResult>> doors;

    @Autowired
    PermissionsTest(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
        own = bench.team("Sloe");
        cell = bench.cell(own, "C1");
        station = bench.station("Lamp");
        bench.signOff(own, Zone.HEAT);
        var otherDay = new Bench(server, json).team("Hawthorn");
        callers = List.of(own.asNobody(), otherDay, bench.team("Elder"), own, bench.teacher);
        doors = Map.ofEntries(
                Map.entry("create a day", by -> by.put(Bench.dayRequest("New"), "/api/labdays/{id}", fresh())),
                Map.entry("edit a day", this::edit),
                Map.entry("open a day", by -> by.put(new EntryRequest(true), "/api/labdays/{id}/entry", day())),
                Map.entry("list days", by -> by.get("/api/labdays")),
                Map.entry("see a day", by -> by.get("/api/labdays/{id}", day())),
                Map.entry("create a team", this::createTeam),
                Map.entry("list teams", by -> by.get("/api/labdays/{id}/teams", day())),
                Map.entry("register a cell", this::registerCell),
                Map.entry("correct a sheet", this::correctSheet),
                Map.entry("record an outcome", this::recordOutcome),
                Map.entry("record a refill", this::recordRefill),
                Map.entry("see the findings", by -> by.get("/api/labdays/{id}/findings", day())),
                Map.entry("list cells", by -> by.get("/api/labdays/{id}/cells", day())),
                Map.entry("see a cell", by -> by.get("/api/cells/{id}", cell)),
                Map.entry("set up a station", this::setUpStation),
                Map.entry("read a station's light", this::readLight),
                Map.entry("see who leans on a light", by -> by.get("/api/stations/{id}/cells", station)),
                Map.entry("ask about a correction", this::askAboutCorrection),
                Map.entry("correct a station", this::correctStation),
                Map.entry("ask about a station", this::askAboutStation),
                Map.entry("give a spectrum", this::giveSpectrum),
                Map.entry("ask about a spectrum", this::askAboutSpectrum),
                Map.entry("set a light reading aside", by -> by.put(aside(), "/api/light-set-asides/{id}", fresh())),
                Map.entry("ask about a light set aside", by -> by.post(aside(), "/api/light-set-asides/preview")),
                Map.entry("read how even a light is", this::readGrid),
                Map.entry("choose the control cell", this::chooseControl),
                Map.entry("see the control cell", by -> by.get("/api/labdays/{id}/control-cell", day())),
                Map.entry("list stations", by -> by.get("/api/labdays/{id}/stations", day())),
                Map.entry("enter a reading", this::enterReading),
                Map.entry("list readings", by -> by.get("/api/cells/{id}/readings", cell)),
                Map.entry("sign a team off", this::signOff),
                Map.entry("withdraw a sign-off", by -> by.put("", "/api/sign-offs/{id}/withdrawal", signedOff())),
                Map.entry("list sign-offs", by -> by.get("/api/labdays/{id}/sign-offs", day())),
                Map.entry("write an incident down", this::writeIncident),
                Map.entry("list incidents", by -> by.get("/api/labdays/{id}/incidents", day())),
                Map.entry("see the hazards", by -> by.get("/api/safety")),
                Map.entry("see the lesson", by -> by.get("/api/labdays/{id}/lesson", day())),
                Map.entry("announce", this::announce),
                Map.entry("start a timer", this::startTimer),
                Map.entry("put on a heater", this::putOnHeater),
                Map.entry("tell of a phone", this::tellOfPhone),
                Map.entry("list phones", by -> by.get("/api/labdays/{id}/phones", day())),
                Map.entry("watch the room", by -> by.get("/api/labdays/{id}/room", day())),
                Map.entry("see the plan", by -> by.get("/api/labdays/{id}/plan", day())),
                Map.entry("see planned cells", by -> by.get("/api/labdays/{id}/plan/cells", day())),
                Map.entry("plan", this::plan),
                Map.entry("change a plan by hand", this::changePlan),
                Map.entry("say which planned cell it is", this::notePlanned),
                Map.entry("see the catalogue", by -> by.get("/api/catalogue")));
    }

    @ParameterizedTest(name = "{0}: nobody {1}, other day {2}, other team {3}, own team {4}, teacher {5}")
    @CsvSource({
        "create a day,           401, 403, 403, 403, 200",
        "edit a day,             401, 403, 403, 403, 200",
        "open a day,             401, 403, 403, 403, 200",
        "list days,              401, 403, 403, 403, 200",
        "see a day,              401, 403, 200, 200, 200",
        "create a team,          401, 403, 403, 403, 200",
        "list teams,             401, 403, 200, 200, 200",
        "register a cell,        401, 403, 403, 200, 200",
        "correct a sheet,        401, 403, 403, 200, 409",
        "record an outcome,      401, 403, 403, 200, 200",
        "record a refill,        401, 403, 403, 200, 200",
        "see the findings,       401, 403, 200, 200, 200",
        "list cells,             401, 403, 200, 200, 200",
        "see a cell,             401, 403, 403, 200, 200",
        "set up a station,       401, 403, 403, 403, 200",
        "read a station's light, 401, 403, 403, 403, 200",
        "read how even a light is, 401, 403, 403, 403, 200",
        "choose the control cell, 401, 403, 403, 403, 200",
        "see the control cell,   401, 403, 200, 200, 200",
        "see who leans on a light, 401, 403, 403, 403, 200",
        "ask about a correction, 401, 403, 403, 403, 404",
        "correct a station,      401, 403, 403, 403, 200",
        "ask about a station,    401, 403, 403, 403, 200",
        "give a spectrum,        401, 403, 403, 403, 200",
        "ask about a spectrum,   401, 403, 403, 403, 200",
        "set a light reading aside, 401, 403, 403, 403, 404",
        "ask about a light set aside, 401, 403, 403, 403, 404",
        "list stations,          401, 403, 200, 200, 200",
        "enter a reading,        401, 403, 403, 200, 200",
        "list readings,          401, 403, 403, 200, 200",
        "sign a team off,        401, 403, 403, 403, 200",
        "withdraw a sign-off,    401, 403, 403, 403, 200",
        "list sign-offs,         401, 403, 200, 200, 200",
        "write an incident down, 401, 403, 403, 403, 200",
        "list incidents,         401, 403, 403, 403, 200",
        "see the hazards,        200, 200, 200, 200, 200",
        "see the lesson,         401, 403, 200, 200, 200",
        "announce,               401, 403, 403, 403, 200",
        "start a timer,          401, 403, 403, 403, 200",
        "put on a heater,        401, 403, 403, 200, 409",
        "tell of a phone,        401, 200, 200, 200, 403",
        "list phones,            401, 403, 403, 403, 200",
        "watch the room,         200, 200, 200, 200, 200",
        "see the plan,           401, 403, 403, 403, 200",
        "see planned cells,      401, 403, 200, 200, 200",
        "plan,                   401, 403, 403, 403, 422",
        "change a plan by hand,  401, 403, 403, 403, 409",
        "say which planned cell it is, 401, 403, 403, 200, 200",
        "see the catalogue,      200, 200, 200, 200, 200",
    })
    void opensEachDoorToThoseItIsFor(String door, int nobody, int otherDay, int otherTeam, int ownTeam, int teacher) {
        var statuses = callers.stream()
                .map(doors.get(door))
                .peek(this::assertSaysNothingMore)
                .map(answer -> answer.getResponse().getStatus())
                .toList();
        assertThat(statuses).containsExactly(nobody, otherDay, otherTeam, ownTeam, teacher);
    }

    private void assertSaysNothingMore(MvcTestResult answer) {
        switch (answer.getResponse().getStatus()) {
            case 401 -> own.problem(answer, ProblemCode.SIGN_IN_NEEDED);
            case 403 ->
                assertThat(own.problem(answer, ProblemCode.NOT_ALLOWED).value()).isNull();
            default -> assertThat(answer.getUnresolvedException()).isNull();
        }
    }

    private MvcTestResult edit(Api by) {
        return by.putIfMatch("\"" + bench.day.version() + "\"", Bench.dayRequest("Edited"), "/api/labdays/{id}", day());
    }

    private MvcTestResult announce(Api by) {
        return by.put(new AnnouncementRequest(day(), "Goggles on.", null), "/api/announcements/{id}", fresh());
    }

    private MvcTestResult startTimer(Api by) {
        return by.put(new TimerRequest(day(), "Bake", 60, null, null), "/api/timers/{id}", fresh());
    }

    private MvcTestResult putOnHeater(Api by) {
        var request = new HeaterSlotRequest(cell, "Plate", 1, new Typed("450", "degC"), 50, null, null, null);
        return by.put(request, "/api/heater-slots/{id}", fresh());
    }

    private MvcTestResult tellOfPhone(Api by) {
        return by.put(new PhoneRequest(0, List.of()), "/api/phones/{id}", fresh());
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

    private MvcTestResult notePlanned(Api by) {
        return by.put(new PlannedCellRequest(cell, null), "/api/planned-cells/{id}", fresh());
    }

    private MvcTestResult createTeam(Api by) {
        return by.put(new TeamRequest(day(), null, "Rowan"), "/api/teams/{id}", fresh());
    }

    private MvcTestResult registerCell(Api by) {
        var label = by.equals(own) ? "C2" : "C3";
        return by.put(Bench.cellRequest(Bench.teamId(own), label), "/api/cells/{id}", fresh());
    }

    private MvcTestResult correctSheet(Api by) {
        var sheet = new SheetRequest(cell, List.of(), null, Bench.NOTICED);
        return by.put(sheet, "/api/cells/{cell}/sheets/{sheet}", cell, fresh());
    }

    private MvcTestResult recordOutcome(Api by) {
        var outcome = new OutcomeRequest(cell, "bake", true, null, null, null, Bench.NOTICED);
        return by.put(outcome, "/api/outcomes/{id}", fresh());
    }

    private MvcTestResult signOff(Api by) {
        var flame = new SignOffRequest(Bench.teamId(own), "flame", Zone.FLAME.points(), 60, null);
        return by.put(flame, "/api/sign-offs/{id}", fresh());
    }

    private UUID signedOff() {
        return bench.teacher
                .answer(bench.teacher.get("/api/labdays/{id}/sign-offs", day()), SignOffsAnswer.class)
                .signOffs()
                .get(0)
                .id();
    }

    private MvcTestResult writeIncident(Api by) {
        var incident = new IncidentRequest(day(), null, "glass", "A plate broke", "Swept up", null, Bench.NOTICED);
        return by.put(incident, "/api/incidents/{id}", fresh());
    }

    private MvcTestResult recordRefill(Api by) {
        var refill = new CellEventRequest(cell, "refill", null, Bench.NOTICED);
        return by.put(refill, "/api/cell-events/{id}", fresh());
    }

    private MvcTestResult setUpStation(Api by) {
        var setup = new StationRequest(day(), "Window", "window", "luxMeter", null, null);
        return by.put(setup, "/api/stations/{id}", fresh());
    }

    private MvcTestResult correctStation(Api by) {
        return by.put(corrected(), "/api/stations/{id}/corrections/{correction}", station, fresh());
    }

    private MvcTestResult askAboutStation(Api by) {
        return by.post(corrected(), "/api/stations/{id}/corrections/preview", station);
    }

    private static StationCorrectionRequest corrected() {
        return new StationCorrectionRequest("coolLed", "luxMeter", null, null, "It was the LED lamp");
    }

    private MvcTestResult giveSpectrum(Api by) {
        return by.put(flat(), "/api/stations/{id}/spectra/{spectrum}", station, fresh());
    }

    private MvcTestResult askAboutSpectrum(Api by) {
        return by.post(flat(), "/api/stations/{id}/spectra/preview", station);
    }

    private static SpectrumRequest flat() {
        return new SpectrumRequest("Flat", "400,1\n700,1");
    }

    private static SetAsideRequest aside() {
        return new SetAsideRequest(fresh(), "A hand over the meter");
    }

    private MvcTestResult readLight(Api by) {
        var light = new IrradianceRequest(station, new Typed("2050", "lx"), null, Bench.NOTICED);
        return by.put(light, "/api/irradiances/{id}", fresh());
    }

    private MvcTestResult readGrid(Api by) {
        var readings = List.of(new Typed("900", "lx"), new Typed("1000", "lx"));
        return by.put(new GridRequest(station, readings, 2, Bench.NOTICED), "/api/grids/{id}", fresh());
    }

    private MvcTestResult chooseControl(Api by) {
        return by.put(new ControlCellRequest(cell), "/api/labdays/{id}/control-cell", day());
    }

    private MvcTestResult askAboutCorrection(Api by) {
        return by.post(new LightPreviewRequest(new Typed("2050", "lx")), "/api/irradiances/{id}/preview", fresh());
    }

    private MvcTestResult enterReading(Api by) {
        return by.put(Bench.darkRequest(cell, new Typed("3", "mV")), "/api/readings/{id}", fresh());
    }

    private UUID day() {
        return bench.day.id();
    }

    private static UUID fresh() {
        return UUID.randomUUID();
    }
}
