package org.berrywatt.server.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.berrywatt.contract.Remark;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** Why a cell does not count yet, and what to do. */
@ServerTest
class CellStandingTest {

    @Autowired
    private ApplicationContext server;

    private ReadCells board;

    @BeforeEach
    void readTheSun() {
        board = new ReadCells(server);
    }

    @Test
    void saysWhatIsMissingMostUrgentFirst() {
        var cell = board.day.cell(board.team, "L1", null);
        assertThat(board.missing(cell)).containsExactly("standing.building", "standing.noArea");

        board.day.lit(cell, board.yard, "400 mV", "0.900 mA");
        assertThat(board.missing(cell)).containsExactly("standing.noDarkCheck", "standing.noArea");

        board.day.dark(cell, "0 mV", "0 uA");
        assertThat(board.missing(cell)).containsExactly("standing.noArea");
    }

    @Test
    void keepsABatteryWaitingWithANumberAndARemedy() {
        var cell = board.day.cell(board.team, "L1", "15 x 15 mm");
        board.day.dark(cell, "300 mV", "80.0 uA");
        board.day.lit(cell, board.yard, "310 mV", "100.0 uA");

        assertThat(board.standing(cell).standing()).isEqualTo("waiting");
        // 80 of 80 + (100 - 80) are there in the dark
        assertThat(board.sentence(board.standing(cell).remark()))
                .startsWith("Still a battery: 80")
                .contains("20 minutes");
    }

    @Test
    void letsASettledBatteryCount() {
        var cell = board.day.cell(board.team, "L1", "15 x 15 mm");
        board.day.dark(cell, "300 mV", "80.0 uA");
        board.day.lit(cell, board.yard, "310 mV", "100.0 uA");

        board.day.minute(40).dark(cell, "2 mV", "0.5 uA");
        board.day.lit(cell, board.yard, "400 mV", "300 uA");

        assertThat(board.standing(cell).standing()).isEqualTo("counts");
    }

    @Test
    void asksToSwapReversedLeads() {
        var cell = board.litCell("L1", "-400 mV", "-0.900 mA");

        assertThat(board.sentence(board.standing(cell).remark())).contains("Swap the two leads");
    }

    @Test
    void namesTheStageThatEndedACell() {
        var cell = board.day.cell(board.team, "L1", "15 x 15 mm");

        board.day.failure(cell, "dye", "washedOff");

        assertThat(board.standing(cell).standing()).isEqualTo("failed");
        assertThat(board.standing(cell).remark())
                .isEqualTo(new Remark(
                        "standing.failed",
                        Map.of("stage", "catalogue.stage.dye", "failure", "catalogue.failure.washedOff")));
    }
}
