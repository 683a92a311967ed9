package org.berrywatt.server.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.UUID;
import org.berrywatt.contract.CellAnswer;
import org.berrywatt.contract.OutcomeAnswer;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.Problem;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class StageOutcomesTest {

    private static final String CELL = "/api/cells/{id}";
    private final UUID id = UUID.randomUUID();
    private final CellBench at;
    private final Cells cells;

    @Autowired
    StageOutcomesTest(MockMvcTester server, JsonMapper json, Cells cells) {
        this.at = new CellBench(server, json);
        this.cells = cells;
    }

    @Test
    void recordsHowAStageEndedAndKeepsWhatACorrectionReplaces() {
        at.bench.cell(at.team, id, "C1");
        var wrong = at.outcome(CellBench.failed(id, "dye", "washedOff"));
        var right = at.outcome(new OutcomeRequest(id, "dye", true, null, "only the edge", wrong.id(), Bench.NOTICED));
        var cell = at.team.answer(at.team.get(CELL, id), CellAnswer.class);
        assertThat(cell.outcomes())
                .extracting(OutcomeAnswer::id, OutcomeAnswer::failure, OutcomeAnswer::replacedBy)
                .containsExactly(tuple(wrong.id(), "washedOff", right.id()), tuple(right.id(), null, null));
        assertThat(cells.find(id).orElseThrow().failure()).isEmpty();
    }

    @Test
    void takesTheLastEndOfAStageThatWasDoneTwice() {
        at.bench.cell(at.team, id, "C1");
        at.bench.signOff(at.team, Zone.HEAT);
        at.outcome(CellBench.failed(id, "bake", "stayedBrown"));
        at.outcome(new OutcomeRequest(id, "bake", true, null, null, null, Bench.NOTICED));
        at.outcome(CellBench.failed(id, "dye", "washedOff"));
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
        at.bench.cell(at.team, id, "C1");
        var request = new OutcomeRequest(id, stage, passed, failure, null, null, Bench.NOTICED);
        var refused = at.team.put(request, "/api/outcomes/{id}", UUID.randomUUID());
        assertThat(refused).hasStatus(422);
        assertThat(at.team.problem(refused, code).field()).isEqualTo(field);
    }

    @Test
    void keepsTheWordsOfAFailureThatNoListNames() {
        at.bench.cell(at.team, id, "C1");
        var words = "The tape took the film along";
        at.outcome(new OutcomeRequest(id, "film", false, "other", words, null, Bench.NOTICED));
        var cell = at.team.answer(at.team.get(CELL, id), CellAnswer.class);
        assertThat(cell.outcomes()).extracting(OutcomeAnswer::note).containsExactly(words);
    }

    @Test
    void refusesWordsThatAreTooManyOrUnfit() {
        at.bench.cell(at.team, id, "C1");
        assertThat(noteRefused("x".repeat(201), "text.tooLong").limit()).isEqualTo("200");
        assertThat(noteRefused("a\u202eb", "text.unfit").field()).isEqualTo("note");
    }

    private Problem noteRefused(String note, String code) {
        var request = new OutcomeRequest(id, "film", false, "other", note, null, Bench.NOTICED);
        return at.team.problem(at.team.put(request, "/api/outcomes/{id}", UUID.randomUUID()), code);
    }
}
