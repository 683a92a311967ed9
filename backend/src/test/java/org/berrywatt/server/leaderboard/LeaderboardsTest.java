package org.berrywatt.server.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.BudgetLine;
import org.berrywatt.contract.CellResultAnswer;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.Remark;
import org.berrywatt.contract.SideFiguresAnswer;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.contract.calculation.NormalisationAnswer;
import org.berrywatt.contract.calculation.NormalisationRequest;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.platform.Texts;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class LeaderboardsTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private Leaderboards leaderboards;

    @Autowired
    private Cells cells;

    @Autowired
    private Texts texts;

    @Autowired
    private MockMvcTester http;

    @Autowired
    private JsonMapper json;

    private Rehearsal day;
    private UUID team;
    private UUID yard;

    @BeforeEach
    void readTheSun() {
        day = new Rehearsal(server);
        team = day.team("Larch");
        yard = day.sunnyStation("Yard");
        day.light(yard, "1000 W/m2");
    }

    /**
     * In full sunlight read by a silicon cell the mismatch is 1 by definition (IEC 60904-7), and the reference is 1000 W/m2
     * too: J = (0.9 mA - 0) / 2.25 cm2 = 4 A/m2, worked by hand.
     */
    @Test
    void bringsAReadingToReferenceConditions() {
        var cell = litCell("L1", "400 mV", "0.900 mA");

        var result = result(cell);

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
                result(litCell("L1", "400 mV", "0.900 mA")).fillFactor());

        assertThat(fillFactor.low()).isBetween(0.25, 0.3);
        assertThat(fillFactor.high()).isBetween(0.7, 0.785);
    }

    @Test
    void givesTheNumbersFromWhichTheCalculatorFindsTheSameResult() {
        var cell = litCell("L1", "400 mV", "0.900 mA");
        day.minute(25).light(yard, "900 W/m2");
        var worked = result(cell);

        var tried = calculated(Objects.requireNonNull(worked.numbers()));

        assertThat(tried.steps()).isEqualTo(worked.steps());
        assertThat(shares(tried.budget())).containsExactly(shares(worked.budget()), within(1e-9));
        var power = Objects.requireNonNull(worked.powerDensityWm2());
        // another draw of 10,000 trials: its ends move by about 1 % of the interval
        assertThat(tried.powerDensityWm2().low()).isCloseTo(power.low(), withinPercentage(5));
        assertThat(tried.powerDensityWm2().high()).isCloseTo(power.high(), withinPercentage(5));
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

    @Test
    void weighsLightBetweenTwoReadingsOfTheStation() {
        var cell = day.cell(team, "L1", "15 x 15 mm");
        day.minute(30).light(yard, "500 W/m2");
        day.minute(15).dark(cell, "0 mV", "0 uA");

        day.lit(cell, yard, "400 mV", "0.900 mA");

        // halfway between 1000 and 500 on a straight line
        assertThat(Objects.requireNonNull(result(cell).effectiveIrradianceWm2()).value())
                .isEqualTo(750, within(1e-6));
    }

    @Test
    void saysWhatIsMissingMostUrgentFirst() {
        var cell = day.cell(team, "L1", null);
        assertThat(missing(cell)).containsExactly("standing.building", "standing.noArea");

        day.lit(cell, yard, "400 mV", "0.900 mA");
        assertThat(missing(cell)).containsExactly("standing.noDarkCheck", "standing.noArea");

        day.dark(cell, "0 mV", "0 uA");
        assertThat(missing(cell)).containsExactly("standing.noArea");
    }

    @Test
    void keepsABatteryWaitingWithANumberAndARemedy() {
        var cell = day.cell(team, "L1", "15 x 15 mm");
        day.dark(cell, "300 mV", "80.0 uA");
        day.lit(cell, yard, "310 mV", "100.0 uA");

        assertThat(standing(cell).standing()).isEqualTo("waiting");
        // 80 of 80 + (100 - 80) are there in the dark
        assertThat(sentence(standing(cell).remark()))
                .startsWith("Still a battery: 80")
                .contains("20 minutes");
    }

    @Test
    void letsASettledBatteryCount() {
        var cell = day.cell(team, "L1", "15 x 15 mm");
        day.dark(cell, "300 mV", "80.0 uA");
        day.lit(cell, yard, "310 mV", "100.0 uA");

        day.minute(40).dark(cell, "2 mV", "0.5 uA");
        day.lit(cell, yard, "400 mV", "300 uA");

        assertThat(standing(cell).standing()).isEqualTo("counts");
    }

    @Test
    void asksToSwapReversedLeads() {
        var cell = litCell("L1", "-400 mV", "-0.900 mA");

        assertThat(sentence(standing(cell).remark())).contains("Swap the two leads");
    }

    @Test
    void namesTheStageThatEndedACell() {
        var cell = day.cell(team, "L1", "15 x 15 mm");

        day.failure(cell, "dye", "washedOff");

        assertThat(standing(cell).standing()).isEqualTo("failed");
        assertThat(standing(cell).remark())
                .isEqualTo(new Remark(
                        "standing.failed",
                        Map.of("stage", "catalogue.stage.dye", "failure", "catalogue.failure.washedOff")));
    }

    @Test
    void sharesAPlaceWhereCellsCannotBeToldApartAndPutsTeamsWithoutResultLast() {
        litCell("L1", "400 mV", "0.900 mA");
        team = day.team("Spruce");
        litCell("S1", "400 mV", "0.905 mA");
        day.team("Yew");

        List<TeamStanding> teams = leaderboards.of(day.labDayId).teams();

        assertThat(teams).extracting(TeamStanding::name).containsExactly("Spruce", "Larch", "Yew");
        assertThat(teams).extracting(TeamStanding::place).containsExactly(1, 1, null);
    }

    @Test
    void tellsHowSureAPlaceIs() {
        litCell("L1", "400 mV", "0.900 mA");
        team = day.team("Spruce");
        litCell("S1", "400 mV", "0.905 mA");

        List<TeamStanding> teams = leaderboards.of(day.labDayId).teams();

        assertThat(teams).extracting(TeamStanding::placeLow).containsExactly(1, 1);
        assertThat(teams).extracting(TeamStanding::placeHigh).containsExactly(2, 2);
        // 0.6 % apart and known to a tenth at best: little better than a coin
        assertThat(Objects.requireNonNull(teams.get(0).chanceAboveNext())).isBetween(0.45, 0.65);
        assertThat(teams.get(1).chanceAboveNext()).isNull();
    }

    @Test
    void verifiesACellThatSomebodyElseReadAlike() {
        day.readBy(new Caller.TeamMember(team, day.labDayId));
        var alike = litCell("L1", "400 mV", "0.900 mA");
        var different = litCell("L2", "400 mV", "1.200 mA");
        assertThat(sideOf("Larch").bestVerifiedCell()).isNull();

        day.minute(5).readBy(Rehearsal.TEACHER);
        day.lit(alike, yard, "402 mV", "0.890 mA");
        day.lit(different, yard, "400 mV", "0.600 mA");

        assertThat(sideOf("Larch").bestVerifiedCell()).isEqualTo(alike);
        assertThat(sideOf("Larch").working()).isEqualTo(2);
    }

    private SideFiguresAnswer sideOf(String name) {
        return leaderboards.of(day.labDayId).teams().stream()
                .filter(standing -> standing.name().equals(name))
                .findFirst()
                .orElseThrow()
                .side();
    }

    @Test
    void givesTheSameLeaderboardForTheSameRecords() {
        litCell("L1", "400 mV", "0.900 mA");

        assertThat(leaderboards.of(day.labDayId)).isEqualTo(leaderboards.of(day.labDayId));
    }

    @Test
    void hasASentenceForEveryRemark() {
        var cell = litCell("L1", "400 mV", "0.900 mA");

        assertThat(result(cell).notes()).isNotEmpty().allMatch(note -> texts.has(note.key()));
    }

    private UUID litCell(String label, String voltage, String current) {
        var cell = day.cell(team, label, "15 x 15 mm");
        day.dark(cell, "0 mV", "0 uA");
        day.lit(cell, yard, voltage, current);
        return cell;
    }

    private CellResultAnswer result(UUID cell) {
        return leaderboards.result(cells.find(cell).orElseThrow());
    }

    private List<String> missing(UUID cell) {
        return result(cell).missing().stream().map(Remark::key).toList();
    }

    private CellStanding standing(UUID cell) {
        return leaderboards.of(day.labDayId).teams().stream()
                .flatMap(standing -> standing.cells().stream())
                .filter(standing -> standing.cellId().equals(cell))
                .findFirst()
                .orElseThrow();
    }

    private String sentence(@Nullable Remark remark) {
        Remark said = Objects.requireNonNull(remark);
        return texts.say(said.key(), said.values());
    }
}
