package org.berrywatt.server.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.contract.RankedFigure;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.access.Caller;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** What a day ranks by, and what each metric needs of a cell. At these currents the meter's burden hardly matters. */
@ServerTest
class DayMetricTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private Leaderboards leaderboards;

    private ReadCells board;
    private Rehearsal day;

    @BeforeEach
    void readTheSun() {
        board = new ReadCells(server);
        day = board.day;
    }

    /** One cell has the higher voltage, the other the higher current: 20 µA and 40 µA of 2.25 cm² in the reference light. */
    @Test
    void turnsTheBoardWhenTheRuleChanges() {
        board.litCell("L1", "450 mV", "20.0 uA");
        board.team = day.team("Spruce");
        board.litCell("S1", "380 mV", "40.0 uA");

        var byCurrent = by("currentDensity.medianOfDeclared");
        var byVoltage = by("voltage.medianOfDeclared");

        assertThat(byCurrent.teams()).extracting(TeamStanding::name).containsExactly("Spruce", "Larch");
        assertThat(figure(byCurrent.teams().get(0)).value()).isCloseTo(40e-6 / 2.25e-4, within(0.02));
        assertThat(figure(byCurrent.teams().get(0)).unit()).isEqualTo("Am2");
        assertThat(byVoltage.teams()).extracting(TeamStanding::name).containsExactly("Larch", "Spruce");
        assertThat(figure(byVoltage.teams().get(0)).value()).isCloseTo(0.45, within(0.005));
        assertThat(byVoltage.metric()).isEqualTo("voltage");
    }

    /** Alike in all but the current, 40 µA to 20 µA; the burden adds up to 5 % to the stronger one. */
    @Test
    void ranksByTheRatioToTheControlCell() {
        var control = board.litCell("C1", "400 mV", "20.0 uA");
        var twice = board.litCell("L1", "400 mV", "40.0 uA");
        day.control(control).rule("ratioToControl.medianOfDeclared");

        assertThat(board.figure(twice).value()).isCloseTo(2, within(0.1));
        assertThat(board.figure(control)).isEqualTo(new RankedFigure(1, "times", 0, 1, 1));
    }

    @Test
    void asksForAControlCellAndForItsReadingAtTheSameStation() {
        var cell = board.litCell("L1", "400 mV", "20.0 uA");
        var control = day.cell(board.team, "C1", "15 x 15 mm");
        day.rule("ratioToControl.medianOfDeclared");
        assertThat(remark(cell)).contains("no control cell");
        assertThat(board.missing(cell)).containsExactly("standing.noControl");

        day.control(control);
        assertThat(remark(cell)).contains("control cell C1 has none at “Yard” within 30 minutes");

        day.dark(control, "0 mV", "0 uA");
        day.minute(31).lit(control, board.yard, "400 mV", "20.0 uA");
        assertThat(board.standing(cell).ranked()).isFalse();

        day.minute(30).lit(control, board.yard, "400 mV", "20.0 uA");
        assertThat(board.standing(cell).ranked()).isTrue();
    }

    @Test
    void comparesEfficienciesOfTheBusiestStationAlone() {
        board.litCell("L1", "400 mV", "20.0 uA");
        var second = board.litCell("L2", "400 mV", "20.0 uA");
        var elsewhere = board.litCell("L3", "400 mV", "20.0 uA");
        var window = day.sunnyStation("Window");
        day.light(window, "500 W/m2");
        day.minute(2).lit(elsewhere, window, "400 mV", "10.0 uA");
        day.rule("efficiencyAsMeasured.meanOfDeclared");

        assertThat(board.figure(second).unit()).isEqualTo("part");
        assertThat(board.standing(elsewhere).figure()).isNull();
        assertThat(remark(elsewhere)).contains("only cells read at “Yard” compare");
    }

    /** Settled at 20 µA by three like readings, 16 µA of it two hours later: 80 %. */
    @Test
    void ranksByWhatIsLeftOfTheSettledCurrent() {
        var cell = board.litCell("L1", "400 mV", "20.0 uA");
        day.rule("retention.medianOfDeclared");
        assertThat(remark(cell)).contains("three times or more");

        day.minute(6).lit(cell, board.yard, "400 mV", "20.0 uA");
        day.minute(12).lit(cell, board.yard, "400 mV", "20.0 uA");
        assertThat(remark(cell)).contains("an hour later or next lesson");

        day.minute(132).light(board.yard, "1000 W/m2");
        day.lit(cell, board.yard, "390 mV", "16.0 uA");
        assertThat(board.figure(cell).value()).isCloseTo(0.8, within(0.01));
    }

    @Test
    void tellsBesideThePlacesWhatACellKept() {
        var cell = board.litCell("L1", "400 mV", "20.0 uA");
        day.minute(6).lit(cell, board.yard, "400 mV", "20.0 uA");
        day.minute(12).lit(cell, board.yard, "400 mV", "20.0 uA");
        assertThat(board.sideOf("Larch").kept()).isNull();

        day.minute(132).light(board.yard, "1000 W/m2");
        day.lit(cell, board.yard, "390 mV", "16.0 uA");

        var kept = Objects.requireNonNull(board.sideOf("Larch").kept());
        assertThat(kept.cellId()).isEqualTo(cell);
        assertThat(kept.share()).isCloseTo(0.8, within(0.01));
        assertThat(kept.hours()).isEqualTo(2);
    }

    /** Settled 12 min after noon at 20 µA: 18 µA is 90 % two hours later, 14 µA is 70 % after a day; nobody looked in between. */
    @Test
    void tellsTheTimeToEightyPerCentOnlyAsFarAsItWasSeen() {
        var cell = board.litCell("L1", "400 mV", "20.0 uA");
        day.minute(6).lit(cell, board.yard, "400 mV", "20.0 uA");
        day.minute(12).lit(cell, board.yard, "400 mV", "20.0 uA");
        assertThat(notes(cell)).noneMatch(note -> note.contains("settled current"));

        day.minute(132).light(board.yard, "1000 W/m2");
        day.lit(cell, board.yard, "390 mV", "18.0 uA");
        assertThat(notes(cell)).anyMatch(note -> note.startsWith("Kept 90") && note.contains("longer than 2"));

        day.minute(12 + 24 * 60).light(board.yard, "1000 W/m2");
        day.lit(cell, board.yard, "380 mV", "14.0 uA");
        assertThat(notes(cell)).anyMatch(note -> note.contains("fell below 80 % between 2.0 h and 24.0 h"));
    }

    @Test
    void ranksByTheShareOfCellsThatWork() {
        board.litCell("L1", "400 mV", "20.0 uA");
        board.litCell("L2", "400 mV", "20.0 uA");
        day.failure(day.cell(board.team, "L3", "15 x 15 mm"), "dye", "washedOff");
        day.rule("yield.meanOfDeclared");

        var figure = figure(board.teamOf("Larch"));
        assertThat(figure.value()).isCloseTo(2 / 3.0, within(1e-12));
        assertThat(figure.low()).isLessThan(0.4);
    }

    @Test
    void verifiesInTheDaysOwnFigure() {
        day.readBy(new Caller.TeamMember(board.team, day.labDayId));
        var cell = board.litCell("L1", "400 mV", "20.0 uA");
        day.rule("voltage.bestVerified");
        assertThat(remark(cell)).contains("only once somebody else has read it again");

        // another current, the same voltage
        day.minute(5).readBy(Rehearsal.TEACHER).lit(cell, board.yard, "402 mV", "11.0 uA");

        assertThat(board.standing(cell).ranked()).isTrue();
        assertThat(board.sideOf("Larch").bestVerifiedCell()).isEqualTo(cell);
    }

    @Test
    void keepsPowerPerAreaBesideWhateverTheDayRanksBy() {
        var cell = board.litCell("L1", "400 mV", "20.0 uA");
        var before = board.standing(cell).powerDensityWm2();
        day.rule("voltage.medianOfDeclared");

        assertThat(board.standing(cell).powerDensityWm2()).isEqualTo(before);
        assertThat(board.result(cell).metric()).isEqualTo("voltage");
        assertThat(board.result(cell).figure()).isEqualTo(board.standing(cell).figure());
    }

    private LeaderboardState by(String rule) {
        day.rule(rule);
        return leaderboards.of(day.labDayId);
    }

    private static RankedFigure figure(TeamStanding team) {
        return Objects.requireNonNull(team.figure());
    }

    private List<String> notes(UUID cell) {
        return board.result(cell).notes().stream().map(board::sentence).toList();
    }

    private String remark(UUID cell) {
        return board.sentence(board.standing(cell).remark());
    }
}
