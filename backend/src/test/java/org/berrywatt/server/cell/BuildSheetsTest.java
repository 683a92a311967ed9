package org.berrywatt.server.cell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.CellAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.RecipeValue;
import org.berrywatt.server.AtOnce;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class BuildSheetsTest {

    private static final String SHEET = "/api/cells/{cellId}/sheets/{sheetId}";
    private final UUID id = UUID.randomUUID();
    private final CellBench at;
    private final JdbcClient database;

    @Autowired
    BuildSheetsTest(MockMvcTester server, JsonMapper json, JdbcClient database) {
        this.at = new CellBench(server, json);
        this.database = database;
    }

    @Test
    void keepsTheEarlierSheetWhenOneIsCorrected() {
        at.bench.cell(at.team, id, "C1");
        var sheet = UUID.randomUUID();
        var corrected =
                at.team.answer(at.team.put(CellBench.correction(id, "380"), SHEET, id, sheet), CellAnswer.class);
        assertThat(corrected.sheetId()).isEqualTo(sheet);
        assertThat(corrected.recipe()).containsExactly(new RecipeValue("bakeTemperature", "380", "degC", 380.0, null));
        assertThat(corrected.area()).isNull();
        assertThat(temperaturesEverWritten()).containsExactlyInAnyOrder("450", "380");
    }

    @Test
    void correctsASheetOnceHoweverOftenItIsSent() {
        at.bench.cell(at.team, id, "C1");
        var sheet = UUID.randomUUID();
        var first = at.team.answer(at.team.put(CellBench.correction(id, "380"), SHEET, id, sheet), CellAnswer.class);
        assertThat(at.team.answer(at.team.put(CellBench.correction(id, "380"), SHEET, id, sheet), CellAnswer.class))
                .isEqualTo(first);
    }

    @Test
    void refusesToCorrectASheetThatIsCorrectedAlready() {
        at.bench.cell(at.team, id, "C1");
        at.team.put(CellBench.correction(id, "380"), SHEET, id, UUID.randomUUID());
        var refused = at.team.put(CellBench.correction(id, "390"), SHEET, id, UUID.randomUUID());
        assertThat(refused).hasStatus(409);
        at.team.problem(refused, ProblemCode.REPLACED_ALREADY);
    }

    @Test
    void letsOneOfTwoCorrectionsAtTheSameMomentPass() {
        at.bench.cell(at.team, id, "C1");
        var statuses = AtOnce.statuses(List.of(
                () -> at.team.put(CellBench.correction(id, "380"), SHEET, id, UUID.randomUUID()),
                () -> at.team.put(CellBench.correction(id, "390"), SHEET, id, UUID.randomUUID())));
        assertThat(statuses).containsExactlyInAnyOrder(200, 409);
    }

    @Test
    void refusesASheetOfAnotherCell() {
        at.bench.cell(at.team, id, "C1");
        var other = at.bench.cell(at.team, "C2");
        at.team.problem(
                at.team.put(CellBench.correction(other, "380"), SHEET, id, UUID.randomUUID()), ProblemCode.NOT_FOUND);
    }

    private List<String> temperaturesEverWritten() {
        return database.sql("select v.text from build_sheet_value v join build_sheet s on s.id = v.sheet_id"
                        + " where s.cell_id = ? and v.parameter = 'bakeTemperature'")
                .param(id)
                .query(String.class)
                .list();
    }
}
