package org.berrywatt.server.cell;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.CellAnswer;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.OutcomeAnswer;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.RecipeValue;
import org.berrywatt.contract.SheetRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.Api;
import org.berrywatt.server.AtOnce;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

@ServerTest
class CellsTest {

    private static final String CELL = "/api/cells/{id}";
    private static final String SHEET = "/api/cells/{cellId}/sheets/{sheetId}";
    private final UUID id = UUID.randomUUID();
    private final Bench bench;
    private final JdbcClient database;
    private final Cells cells;
    private final Api team;

    @Autowired
    CellsTest(MockMvcTester server, JsonMapper json, JdbcClient database, Cells cells) {
        this.bench = new Bench(server, json);
        this.database = database;
        this.cells = cells;
        this.team = bench.team("Sloe");
    }

    @Test
    void registersACellWithItsRecipeAndArea() {
        var cell = team.answer(team.put(request("C1"), CELL, id), CellAnswer.class);
        assertThat(cell.label()).isEqualTo("C1");
        assertThat(cell.recipe())
                .containsExactly(
                        new RecipeValue("dyeSource", "hibiscus", null, null),
                        new RecipeValue("bakeTemperature", "450", "degC", 450.0));
        assertThat(cell.area()).isEqualTo(new Typed("15 x 15", "mm"));
        assertThat(cell.areaCm2()).isCloseTo(2.25, within(1e-12));
        // 0.5 mm on each side of a 15 mm square: 4.7 % of its area (common practice, no source)
        assertThat(requireNonNull(cell.areaUncertaintyCm2()) / requireNonNull(cell.areaCm2()))
                .isCloseTo(0.047, within(0.0005));
    }

    @Test
    void registersACellOnceHoweverOftenItIsSent() {
        var first = team.answer(team.put(request("C1"), CELL, id), CellAnswer.class);
        assertThat(team.answer(team.put(request("C1"), CELL, id), CellAnswer.class))
                .isEqualTo(first);
        assertThat(team.answers(team.get("/api/labdays/{id}/cells", bench.day.id()), CellAnswer.class))
                .containsExactly(first);
    }

    @Test
    void refusesAnotherCellUnderTheSameId() {
        team.put(request("C1"), CELL, id);
        team.problem(team.put(request("C2"), CELL, id), ProblemCode.ID_REUSED);
    }

    @Test
    void refusesALabelThatAnotherTeamScratchedOnItsGlass() {
        bench.cell(bench.team("Elder"), "C1");
        var refused = team.put(request("c1"), CELL, id);
        assertThat(refused).hasStatus(409);
        assertThat(team.problem(refused, ProblemCode.LABEL_TAKEN).value()).isEqualTo("c1");
    }

    @Test
    void refusesMoreCellsThanADayGrantsEachTeam() {
        Stream.of("C1", "C2", "C3").forEach(label -> bench.cell(team, label));
        var refused = team.put(request("C4"), CELL, id);
        assertThat(refused).hasStatus(409);
        assertThat(team.problem(refused, ProblemCode.CELLS_FULL).limit()).isEqualTo("3");
    }

    @Test
    void registersEachLabelOnceWhenTwoPhonesSendItAtTheSameMoment() {
        var statuses = AtOnce.statuses(List.of(
                () -> team.put(request("C1"), CELL, id), () -> team.put(request("C1"), CELL, UUID.randomUUID())));
        assertThat(statuses).containsExactlyInAnyOrder(200, 409);
    }

    @Test
    void keepsTheEarlierSheetWhenOneIsCorrected() {
        bench.cell(team, id, "C1");
        var sheet = UUID.randomUUID();
        var corrected = team.answer(team.put(correction(id, "380"), SHEET, id, sheet), CellAnswer.class);
        assertThat(corrected.sheetId()).isEqualTo(sheet);
        assertThat(corrected.recipe()).containsExactly(new RecipeValue("bakeTemperature", "380", "degC", 380.0));
        assertThat(corrected.area()).isNull();
        assertThat(temperaturesEverWritten()).containsExactlyInAnyOrder("450", "380");
    }

    @Test
    void correctsASheetOnceHoweverOftenItIsSent() {
        bench.cell(team, id, "C1");
        var sheet = UUID.randomUUID();
        var first = team.answer(team.put(correction(id, "380"), SHEET, id, sheet), CellAnswer.class);
        assertThat(team.answer(team.put(correction(id, "380"), SHEET, id, sheet), CellAnswer.class))
                .isEqualTo(first);
    }

    @Test
    void refusesToCorrectASheetThatIsCorrectedAlready() {
        bench.cell(team, id, "C1");
        team.put(correction(id, "380"), SHEET, id, UUID.randomUUID());
        var refused = team.put(correction(id, "390"), SHEET, id, UUID.randomUUID());
        assertThat(refused).hasStatus(409);
        team.problem(refused, ProblemCode.REPLACED_ALREADY);
    }

    @Test
    void letsOneOfTwoCorrectionsAtTheSameMomentPass() {
        bench.cell(team, id, "C1");
        var statuses = AtOnce.statuses(List.of(
                () -> team.put(correction(id, "380"), SHEET, id, UUID.randomUUID()),
                () -> team.put(correction(id, "390"), SHEET, id, UUID.randomUUID())));
        assertThat(statuses).containsExactlyInAnyOrder(200, 409);
    }

    @Test
    void refusesASheetOfAnotherCell() {
        bench.cell(team, id, "C1");
        var other = bench.cell(team, "C2");
        team.problem(team.put(correction(other, "380"), SHEET, id, UUID.randomUUID()), ProblemCode.NOT_FOUND);
    }

    @Test
    void recordsHowAStageEndedAndKeepsWhatACorrectionReplaces() {
        bench.cell(team, id, "C1");
        var wrong = outcome(failed("dye", "washedOff"));
        var right = outcome(new OutcomeRequest(id, "dye", true, null, "only the edge", wrong.id(), Bench.NOTICED));
        var cell = team.answer(team.get(CELL, id), CellAnswer.class);
        assertThat(cell.outcomes())
                .extracting(OutcomeAnswer::id, OutcomeAnswer::failure, OutcomeAnswer::replacedBy)
                .containsExactly(tuple(wrong.id(), "washedOff", right.id()), tuple(right.id(), null, null));
        assertThat(cells.find(id).orElseThrow().failure()).isEmpty();
    }

    @Test
    void takesTheLastEndOfAStageThatWasDoneTwice() {
        bench.cell(team, id, "C1");
        bench.signOff(team, Zone.HEAT);
        outcome(failed("bake", "stayedBrown"));
        outcome(new OutcomeRequest(id, "bake", true, null, null, null, Bench.NOTICED));
        outcome(failed("dye", "washedOff"));
        assertThat(cells.find(id).orElseThrow().outcomes())
                .extracting(StageOutcome::stage, StageOutcome::passed)
                .containsExactly(tuple("bake", true), tuple("dye", false));
        assertThat(cells.find(id).orElseThrow().failure().orElseThrow().failure())
                .isEqualTo("washedOff");
    }

    @ParameterizedTest(name = "stage {0}, passed {1}, failure {2} is refused with {3} at {4}")
    @CsvSource({
        "polish, true, , choice.unknown, stage",
        "dye, false, , value.missing, failure",
        "dye, false, stayedBrown, choice.unknown, failure",
        "dye, true, washedOff, choice.unknown, failure"
    })
    void refusesAnEndThatNoStageKnows(
            String stage, boolean passed, @Nullable String failure, String code, String field) {
        bench.cell(team, id, "C1");
        var request = new OutcomeRequest(id, stage, passed, failure, null, null, Bench.NOTICED);
        var refused = team.put(request, "/api/outcomes/{id}", UUID.randomUUID());
        assertThat(refused).hasStatus(422);
        assertThat(team.problem(refused, code).field()).isEqualTo(field);
    }

    @ParameterizedTest(name = "{0} typed as {1} {2} is refused with {3}: {4}")
    @CsvSource({
        "bakeTemperature, 45o, degC, quantity.notANumber, “45o” is not a number.",
        "bakeTemperature, 4500, degC, quantity.impossible, “4500 °C” is not possible here; it must lie in [0 1000] °C.",
        "bakeTemperature, 450 V, degC, quantity.wrongUnit, “V” has a unit of another kind.",
        "bakeTime, 30 fortnights, min, quantity.unknownUnit, The unit in “fortnights” is not known here.",
        "dyeSource, cobalt, , choice.unknown, “cobalt” is not one of the choices.",
        "colour, red, , choice.unknown, “colour” is not one of the choices.",
    })
    void refusesARecipeThatCannotBe(
            String parameter, String text, @Nullable String unit, String code, String sentence) {
        var request = request("C1", List.of(new BuildValue(parameter, text, unit)), null);
        var refused = team.put(request, CELL, id);
        assertThat(refused).hasStatus(422);
        var problem = team.problem(refused, code);
        assertThat(problem.field()).startsWith("recipe[0].");
        assertThat(problem.detail().replace(",", "")).startsWith(sentence);
        assertThat(team.get(CELL, id)).hasStatus(404);
    }

    @Test
    void refusesAParameterNamedTwice() {
        var twice = List.of(new BuildValue("bakeTime", "30", "min"), new BuildValue("bakeTime", "40", "min"));
        var problem = team.problem(team.put(request("C1", twice, null), CELL, id), ProblemCode.CHOICE_UNKNOWN);
        assertThat(problem.field()).isEqualTo("recipe[1].parameter");
    }

    @Test
    void leavesOutWhatWasLeftEmpty() {
        var empty = List.of(new BuildValue("bakeTime", " ", "min"), new BuildValue("seal", "", null));
        var cell = team.answer(team.put(request("C1", empty, new Typed("", "mm")), CELL, id), CellAnswer.class);
        assertThat(cell.recipe()).isEmpty();
        assertThat(cell.area()).isNull();
    }

    @ParameterizedTest(name = "area typed as {0} {1} is refused with {2}")
    @CsvSource({
        "-2, cm2, quantity.impossible",
        "0, cm2, quantity.impossible",
        "15 x -15, mm, quantity.impossible",
        "15 x 15 x 15, mm, quantity.notANumber",
        "two, cm2, quantity.notANumber",
        "15 x 15, V, quantity.wrongUnit",
        "5 acre, cm2, quantity.unknownUnit"
    })
    void refusesAnAreaThatCannotBe(String text, String unit, String code) {
        var refused = team.put(request("C1", List.of(), new Typed(text, unit)), CELL, id);
        assertThat(refused).hasStatus(422);
        assertThat(team.problem(refused, code).field()).isEqualTo("area");
    }

    @ParameterizedTest(name = "without {0}")
    @CsvSource({"teamId, teamId", "label, label", "recipe, recipe", "noticedAt, noticedAt"})
    void refusesARequestWithoutWhatItNeeds(String missing, String field) {
        var body = team.json().valueToTree(request("C1"));
        ((ObjectNode) body).putNull(missing);
        assertThat(team.problem(team.put(body.toString(), CELL, id), ProblemCode.VALUE_MISSING)
                        .field())
                .isEqualTo(field);
    }

    @Test
    void takesNothingMoreOnceTheDayIsClosedButAnswersWhatItTookBefore() {
        bench.cell(team, id, "C1");
        bench.setEntry(false);
        assertThat(team.put(Bench.cellRequest(Bench.teamId(team), "C1"), CELL, id))
                .hasStatusOk();
        var late = team.put(request("C2"), CELL, UUID.randomUUID());
        assertThat(late).hasStatus(409);
        team.problem(late, ProblemCode.LABDAY_CLOSED);
        team.problem(team.put(correction(id, "380"), SHEET, id, UUID.randomUUID()), ProblemCode.LABDAY_CLOSED);
        var end = team.put(failed("dye", "washedOff"), "/api/outcomes/{id}", UUID.randomUUID());
        team.problem(end, ProblemCode.LABDAY_CLOSED);
    }

    @Test
    void showsATeamItsOwnCellsAndTheTeacherAll() {
        bench.cell(team, id, "C1");
        bench.cell(bench.team("Elder"), "C2");
        assertThat(labels(team)).containsExactly("C1");
        assertThat(labels(bench.teacher)).containsExactly("C1", "C2");
    }

    private List<String> labels(Api caller) {
        return caller.answers(caller.get("/api/labdays/{id}/cells", bench.day.id()), CellAnswer.class).stream()
                .map(CellAnswer::label)
                .toList();
    }

    private CellRequest request(String label) {
        return Bench.cellRequest(Bench.teamId(team), label);
    }

    private CellRequest request(String label, List<BuildValue> recipe, @Nullable Typed area) {
        return new CellRequest(Bench.teamId(team), label, recipe, area, Bench.NOTICED);
    }

    private static SheetRequest correction(UUID replaces, String bakeTemperature) {
        var recipe = List.of(new BuildValue("bakeTemperature", bakeTemperature, "degC"));
        return new SheetRequest(replaces, recipe, null, Bench.NOTICED);
    }

    private OutcomeRequest failed(String stage, String failure) {
        return new OutcomeRequest(id, stage, false, failure, null, null, Bench.NOTICED);
    }

    private OutcomeAnswer outcome(OutcomeRequest request) {
        return team.answer(team.put(request, "/api/outcomes/{id}", UUID.randomUUID()), OutcomeAnswer.class);
    }

    private List<String> temperaturesEverWritten() {
        return database.sql("select v.text from build_sheet_value v join build_sheet s on s.id = v.sheet_id"
                        + " where s.cell_id = ? and v.parameter = 'bakeTemperature'")
                .param(id)
                .query(String.class)
                .list();
    }
}
