package org.berrywatt.server.cell;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.CellAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.RecipeValue;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.AtOnce;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class CellsTest {

    private static final String CELL = "/api/cells/{id}";
    private static final String SHEET = "/api/cells/{cellId}/sheets/{sheetId}";
    private final UUID id = UUID.randomUUID();
    private final CellBench at;

    @Autowired
    CellsTest(MockMvcTester server, JsonMapper json) {
        this.at = new CellBench(server, json);
    }

    @Test
    void registersACellWithItsRecipeAndArea() {
        var cell = at.team.answer(at.team.put(at.request("C1"), CELL, id), CellAnswer.class);
        assertThat(cell.label()).isEqualTo("C1");
        assertThat(cell.recipe())
                .containsExactly(
                        new RecipeValue("dyeSource", "hibiscus", null, null, null),
                        new RecipeValue("bakeTemperature", "450", "degC", 450.0, null));
        assertThat(cell.area()).isEqualTo(new Typed("15 x 15", "mm"));
        assertThat(cell.areaCm2()).isCloseTo(2.25, within(1e-12));
        // 0.5 mm on each side of a 15 mm square: 4.7 % of its area (common practice, no source)
        assertThat(requireNonNull(cell.areaUncertaintyCm2()) / requireNonNull(cell.areaCm2()))
                .isCloseTo(0.047, within(0.0005));
    }

    @Test
    void registersACellOnceHoweverOftenItIsSent() {
        var first = at.team.answer(at.team.put(at.request("C1"), CELL, id), CellAnswer.class);
        assertThat(at.team.answer(at.team.put(at.request("C1"), CELL, id), CellAnswer.class))
                .isEqualTo(first);
        assertThat(at.team.answers(at.team.get("/api/labdays/{id}/cells", at.bench.day.id()), CellAnswer.class))
                .containsExactly(first);
    }

    @Test
    void refusesAnotherCellUnderTheSameId() {
        at.team.put(at.request("C1"), CELL, id);
        at.team.problem(at.team.put(at.request("C2"), CELL, id), ProblemCode.ID_REUSED);
    }

    @Test
    void refusesALabelThatAnotherTeamScratchedOnItsGlass() {
        at.bench.cell(at.bench.team("Elder"), "C1");
        var refused = at.team.put(at.request("c1"), CELL, id);
        assertThat(refused).hasStatus(409);
        assertThat(at.team.problem(refused, ProblemCode.LABEL_TAKEN).value()).isEqualTo("c1");
    }

    @Test
    void refusesMoreCellsThanADayGrantsEachTeam() {
        Stream.of("C1", "C2", "C3").forEach(label -> at.bench.cell(at.team, label));
        var refused = at.team.put(at.request("C4"), CELL, id);
        assertThat(refused).hasStatus(409);
        assertThat(at.team.problem(refused, ProblemCode.CELLS_FULL).limit()).isEqualTo("3");
    }

    @Test
    void registersEachLabelOnceWhenTwoPhonesSendItAtTheSameMoment() {
        var statuses = AtOnce.statuses(List.of(
                () -> at.team.put(at.request("C1"), CELL, id),
                () -> at.team.put(at.request("C1"), CELL, UUID.randomUUID())));
        assertThat(statuses).containsExactlyInAnyOrder(200, 409);
    }

    @Test
    void keepsWhatATeamTookThatNoListNames() {
        var recipe = List.of(
                new BuildValue("dyeSource", "otherPlant", null, " Sea  buckthorn "),
                new BuildValue("seal", "other", null, " "),
                new BuildValue("spacer", "tape", null, "words that a named level does not need"));
        var cell = at.team.answer(at.team.put(at.request("C1", recipe, null), CELL, id), CellAnswer.class);
        assertThat(cell.recipe())
                .containsExactlyInAnyOrder(
                        new RecipeValue("dyeSource", "otherPlant", null, null, "Sea buckthorn"),
                        new RecipeValue("seal", "other", null, null, null),
                        new RecipeValue("spacer", "tape", null, null, null));
    }

    @Test
    void leavesOutWhatWasLeftEmpty() {
        var empty = List.of(new BuildValue("bakeTime", " ", "min"), new BuildValue("seal", "", null));
        var cell =
                at.team.answer(at.team.put(at.request("C1", empty, new Typed("", "mm")), CELL, id), CellAnswer.class);
        assertThat(cell.recipe()).isEmpty();
        assertThat(cell.area()).isNull();
    }

    @Test
    void takesNothingMoreOnceTheDayIsClosedButAnswersWhatItTookBefore() {
        at.bench.cell(at.team, id, "C1");
        at.bench.setEntry(false);
        assertThat(at.team.put(Bench.cellRequest(Bench.teamId(at.team), "C1"), CELL, id))
                .hasStatusOk();
        var late = at.team.put(at.request("C2"), CELL, UUID.randomUUID());
        assertThat(late).hasStatus(409);
        at.team.problem(late, ProblemCode.LABDAY_CLOSED);
        at.team.problem(
                at.team.put(CellBench.correction(id, "380"), SHEET, id, UUID.randomUUID()), ProblemCode.LABDAY_CLOSED);
        var end = at.team.put(CellBench.failed(id, "dye", "washedOff"), "/api/outcomes/{id}", UUID.randomUUID());
        at.team.problem(end, ProblemCode.LABDAY_CLOSED);
    }

    @Test
    void showsATeamItsOwnCellsAndTheTeacherAll() {
        at.bench.cell(at.team, id, "C1");
        at.bench.cell(at.bench.team("Elder"), "C2");
        assertThat(labels(at.team)).containsExactly("C1");
        assertThat(labels(at.bench.teacher)).containsExactly("C1", "C2");
    }

    private List<String> labels(Api caller) {
        return caller.answers(caller.get("/api/labdays/{id}/cells", at.bench.day.id()), CellAnswer.class).stream()
                .map(CellAnswer::label)
                .toList();
    }
}
