package org.berrywatt.server.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.contract.LightPreviewAnswer;
import org.berrywatt.contract.LightPreviewAnswer.CellMove;
import org.berrywatt.contract.LightPreviewAnswer.TeamMove;
import org.berrywatt.contract.LightUseAnswer;
import org.berrywatt.contract.LightUseAnswer.CellAtLight;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SetAsideRequest;
import org.berrywatt.contract.SpectrumRequest;
import org.berrywatt.contract.StationCorrectionRequest;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.light.LightSetAsides;
import org.berrywatt.server.light.StationChanges;
import org.berrywatt.server.light.Stations;
import org.berrywatt.server.platform.Refusal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

@ServerTest
class LightEffectsTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private Leaderboards leaderboards;

    @Autowired
    private Stations stations;

    @Autowired
    private StationChanges changes;

    @Autowired
    private LightSetAsides setAsides;

    private Rehearsal day;
    private UUID yard;
    private UUID first;

    @BeforeEach
    void readTheSun() {
        day = new Rehearsal(server);
        yard = day.sunnyStation("Yard");
        first = day.light(yard, "1000 W/m2");
    }

    @Test
    void tellsWhichCellsLeanOnWhichReading() {
        var larch = day.team("Larch");
        lit(larch, "L1", 5, "0.900 mA");
        var second = day.minute(10).light(yard, "900 W/m2");
        lit(larch, "L2", 20, "0.900 mA");

        assertThat(uses())
                .extracting(LightUseAnswer::irradianceId, LightEffectsTest::labels)
                .containsExactly(tuple(first, List.of("L1")), tuple(second, List.of("L1", "L2")));
    }

    @Test
    void leavesOutCellsThatHaveNoResult() {
        var cell = day.cell(day.team("Larch"), "L1", "15 x 15 mm");
        day.lit(cell, yard, "400 mV", "0.900 mA");

        assertThat(uses()).extracting(LightEffectsTest::labels).containsExactly(List.of());
    }

    /** Half the light behind the same current is twice the current per light (IEC 60891: current in proportion to light). */
    @Test
    void showsWhatACorrectionWouldMoveAndWritesNothing() {
        lit(day.team("Larch"), "L1", 5, "0.900 mA");
        lit(day.team("Rowan"), "R1", 50, "0.900 mA");
        day.minute(45).light(yard, "1000 W/m2");
        var before = board();

        var preview = preview(first, "500 W/m2");

        // five minutes of 45 past the reading the straight line has climbed from 500 to 555.6 W/m²
        assertThat(ratio(only(preview.cells()))).isGreaterThan(1000 / 555.6);
        assertThat(only(preview.cells()).label()).isEqualTo("L1");
        assertThat(preview.teams()).extracting(TeamMove::name).contains("Larch");
        assertThat(board()).isEqualTo(before);
    }

    @Test
    void foretellsTheLeaderboardToTheBit() {
        lit(day.team("Larch"), "L1", 5, "0.900 mA");
        lit(day.team("Rowan"), "R1", 30, "0.700 mA");
        var foretold = preview(first, "400 W/m2");

        day.minute(60).light(yard, "400 W/m2", first);

        assertThat(foretold.cells())
                .isNotEmpty()
                .allSatisfy(move -> assertThat(cell(move.cellId())).isEqualTo(move.after()));
        assertThat(foretold.teams())
                .isNotEmpty()
                .allSatisfy(move -> assertThat(team(move.teamId()).figure()).isEqualTo(move.after()));
    }

    @Test
    void saysWhenACellWouldStopCounting() {
        lit(day.team("Larch"), "L1", 0, "0.900 mA");

        // below 0.01 W/m² nothing is normalised
        var move = only(preview(first, "0.001 W/m2").cells());

        assertThat(move.before().standing()).isEqualTo("counts");
        assertThat(move.after().standing()).isEqualTo("waiting");
    }

    @Test
    void takesACorrectedReadingForWhenItWasRead() {
        var cell = lit(day.team("Larch"), "L1", 5, "0.900 mA");
        day.minute(60).light(yard, "500 W/m2");

        day.minute(90).light(yard, "800 W/m2", first);

        // 5 of 60 minutes on the way from 800 to 500 W/m²
        assertThat(effectiveWm2(cell)).isEqualTo(775, within(1e-6));
    }

    @Test
    void refusesToForetellASecondCorrection() {
        day.minute(5).light(yard, "800 W/m2", first);
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> preview(first, "700 W/m2"))
                .matches(refusal -> refusal.code() == ProblemCode.REPLACED_ALREADY);
    }

    /** A white LED holds little red, on which silicon lives and a red dye does not: 2.9 times as much light (common practice). */
    @Test
    void foretellsACorrectedLampToTheBit() {
        var cell = lit(day.team("Larch"), "L1", 5, "0.900 mA");
        var before = effectiveWm2(cell);
        var led = new StationCorrectionRequest("Window", "coolLed", "referenceCell", null, null, "It was the LED lamp");
        var foretold = leaderboards.ifStationWere(changes.ifCorrected(yard, led, Rehearsal.TEACHER));

        changes.correct(yard, UUID.randomUUID(), led, Rehearsal.TEACHER, Rehearsal.NOON);

        assertThat(effectiveWm2(cell) / before).isBetween(2.0, 4.0);
        assertThat(cell(cell)).isEqualTo(only(foretold.cells()).after());
    }

    @Test
    void foretellsALightReadingSetAsideAndReturnsToTheBit() {
        var cell = lit(day.team("Larch"), "L1", 5, "0.900 mA");
        day.minute(60).light(yard, "500 W/m2");
        var before = board();
        var aside = new SetAsideRequest(first, "A hand over the meter");
        var foretold = leaderboards.ifStationWere(setAsides.ifPut(aside, Rehearsal.TEACHER, Rehearsal.NOON));

        setAsides.put(UUID.randomUUID(), aside, Rehearsal.TEACHER, Rehearsal.NOON);

        // the other reading is the only one left, and holds before it, too
        assertThat(effectiveWm2(cell)).isEqualTo(500, within(1e-9));
        assertThat(cell(cell)).isEqualTo(only(foretold.cells()).after());
        setAsides.put(UUID.randomUUID(), new SetAsideRequest(first, null), Rehearsal.TEACHER, Rehearsal.NOON);
        assertThat(board()).isEqualTo(before);
    }

    /** One wavelength: silicon and dye differ there by their responses alone, and every lamp of it is alike. */
    @Test
    void foretellsASpectrumOfItsOwnToTheBit() {
        var cell = lit(day.team("Larch"), "L1", 5, "0.900 mA");
        var green = new SpectrumRequest("Laser pointer", "400,0\n531,0\n532,1\n533,0\n700,0");
        var foretold = leaderboards.ifStationWere(changes.ifLitBy(yard, green, Rehearsal.TEACHER));

        changes.give(yard, UUID.randomUUID(), green, Rehearsal.TEACHER, Rehearsal.NOON);

        assertThat(cell(cell)).isEqualTo(only(foretold.cells()).after());
        assertThat(effectiveWm2(cell)).isGreaterThan(1000);
    }

    private double effectiveWm2(UUID cell) {
        return Objects.requireNonNull(leaderboards
                        .result(server.getBean(Cells.class).requireOwn(cell, Rehearsal.TEACHER))
                        .effectiveIrradianceWm2())
                .value();
    }

    private UUID lit(UUID team, String label, int minute, String current) {
        var cell = day.minute(minute).cell(team, label, "15 x 15 mm");
        day.dark(cell, "0 mV", "0 uA");
        day.lit(cell, yard, "400 mV", current);
        return cell;
    }

    private LightPreviewAnswer preview(UUID reading, String light) {
        return leaderboards.ifStationWere(stations.ifCorrected(reading, new Typed(light, null), Rehearsal.TEACHER));
    }

    private List<LightUseAnswer> uses() {
        return leaderboards.leaningOn(stations.find(yard).orElseThrow());
    }

    private LeaderboardState board() {
        return leaderboards.of(day.labDayId);
    }

    private TeamStanding team(UUID id) {
        return only(board().teams().stream()
                .filter(team -> team.teamId().equals(id))
                .toList());
    }

    private CellStanding cell(UUID id) {
        return only(board().teams().stream()
                .flatMap(team -> team.cells().stream())
                .filter(cell -> cell.cellId().equals(id))
                .toList());
    }

    private static double ratio(CellMove move) {
        return Objects.requireNonNull(move.after().powerDensityWm2()).value()
                / Objects.requireNonNull(move.before().powerDensityWm2()).value();
    }

    private static List<String> labels(LightUseAnswer use) {
        return use.cells().stream().map(CellAtLight::label).toList();
    }

    private static <T> T only(List<T> list) {
        assertThat(list).hasSize(1);
        return list.get(0);
    }
}
