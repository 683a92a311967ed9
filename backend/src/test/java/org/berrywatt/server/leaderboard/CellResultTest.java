package org.berrywatt.server.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.berrywatt.contract.BudgetLine;
import org.berrywatt.contract.calculation.NormalisationAnswer;
import org.berrywatt.contract.calculation.NormalisationRequest;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.platform.Texts;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** What the readings of one cell come to. */
@ServerTest
class CellResultTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private Texts texts;

    @Autowired
    private MockMvcTester http;

    @Autowired
    private JsonMapper json;

    private ReadCells board;

    @BeforeEach
    void readTheSun() {
        board = new ReadCells(server);
    }

    /**
     * In full sunlight read by a silicon cell the mismatch is 1 by definition (IEC 60904-7), and the reference is 1000 W/m2
     * too: J = (0.9 mA - 0) / 2.25 cm2 = 4 A/m2, worked by hand.
     */
    @Test
    void bringsAReadingToReferenceConditions() {
        var cell = board.litCell("L1", "400 mV", "0.900 mA");

        var result = board.result(cell);

        assertThat(result.standing()).isEqualTo("counts");
        assertThat(Objects.requireNonNull(result.effectiveIrradianceWm2()).value())
                .isEqualTo(1000, within(1e-6));
        var density = Objects.requireNonNull(result.currentDensityAm2());
        assertThat(4.0).isBetween(density.low(), density.high());
        assertThat(result.budget().stream().mapToDouble(BudgetLine::share).sum())
                .isEqualTo(1, within(1e-9));
        assertThat(result.steps()).isNotEmpty();
    }

    /** Without a sweep a fill factor lies between a straight line's quarter and Green's FF0, 0.78 at 0.4 V. */
    @Test
    void givesNoIntervalBeyondWhatACellCanHave() {
        var fillFactor = Objects.requireNonNull(
                board.result(board.litCell("L1", "400 mV", "0.900 mA")).fillFactor());

        assertThat(fillFactor.low()).isBetween(0.25, 0.3);
        assertThat(fillFactor.high()).isBetween(0.7, 0.785);
    }

    @Test
    void givesTheNumbersFromWhichTheCalculatorFindsTheSameResult() {
        var cell = board.litCell("L1", "400 mV", "0.900 mA");
        board.day.minute(25).light(board.yard, "900 W/m2");
        var worked = board.result(cell);

        var tried = calculated(Objects.requireNonNull(worked.numbers()));

        assertThat(tried.steps()).isEqualTo(worked.steps());
        assertThat(shares(tried.budget())).containsExactly(shares(worked.budget()), within(1e-9));
        var power = Objects.requireNonNull(worked.powerDensityWm2());
        // another draw of 10,000 trials: the ends of a shortest interval move by a few per cent of it
        var room = within(0.07 * (power.high() - power.low()));
        assertThat(tried.powerDensityWm2().low()).isCloseTo(power.low(), room);
        assertThat(tried.powerDensityWm2().high()).isCloseTo(power.high(), room);
    }

    @Test
    void weighsLightBetweenTwoReadingsOfTheStation() {
        var cell = board.day.cell(board.team, "L1", "15 x 15 mm");
        board.day.minute(30).light(board.yard, "500 W/m2");
        board.day.minute(15).dark(cell, "0 mV", "0 uA");

        board.day.lit(cell, board.yard, "400 mV", "0.900 mA");

        // halfway between 1000 and 500 on a straight line
        assertThat(Objects.requireNonNull(board.result(cell).effectiveIrradianceWm2())
                        .value())
                .isEqualTo(750, within(1e-6));
    }

    @Test
    void hasASentenceForEveryRemark() {
        var cell = board.litCell("L1", "400 mV", "0.900 mA");

        assertThat(board.result(cell).notes()).isNotEmpty().allMatch(note -> texts.has(note.key()));
    }

    private static double[] shares(List<BudgetLine> budget) {
        return budget.stream().mapToDouble(BudgetLine::share).toArray();
    }

    private NormalisationAnswer calculated(NormalisationRequest numbers) {
        var answer = http.post()
                .uri("/api/calculations/normalisation")
                .contentType(MediaType.APPLICATION_JSON)
                .content(json.writeValueAsString(numbers))
                .exchange();
        return json.readValue(answer.getResponse().getContentAsByteArray(), NormalisationAnswer.class);
    }
}
