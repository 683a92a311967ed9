package org.berrywatt.server.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.CellResultAnswer;
import org.berrywatt.contract.Remark;
import org.berrywatt.contract.SettlingAnswer;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.cell.Cells;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

@ServerTest
class CellHistoryTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private Leaderboards leaderboards;

    @Autowired
    private Cells cells;

    private Rehearsal day;
    private UUID yard;
    private UUID cell;

    @BeforeEach
    void fillACell() {
        day = new Rehearsal(server);
        yard = day.sunnyStation("Yard");
        day.light(yard, "1000 W/m2");
        cell = day.cell(day.team("Larch"), "L1", "15 x 15 mm");
        day.dark(cell, "0 mV", "0 uA");
    }

    /**
     * By hand: 0.9 mA less 0.5 mA exp(-t/15 min) at 0, 10, 20 min; 0.1 % per digit. At 20 min 0.132 mA of 0.9 mA is still to
     * come, 15 %, and 5 % or 45 uA after 15 min · ln(0.132/0.045) = 16 min more. The fit needs a fourth reading, at 15 min.
     */
    @Test
    void saysWhenToReadASettlingCellAgain() {
        day.minute(0).lit(cell, yard, "400 mV", "0.400 mA");
        day.minute(10).lit(cell, yard, "400 mV", "0.643 mA");
        day.minute(15).lit(cell, yard, "400 mV", "0.716 mA");
        day.light(yard, "1000 W/m2");
        day.minute(20).lit(cell, yard, "400 mV", "0.768 mA");

        var remark = remark("standing.settling");

        assertThat(number(remark, "percent")).isBetween(12.0, 18.0);
        assertThat(number(remark, "minutes")).isBetween(12.0, 21.0);
        assertThat(result().standing()).isEqualTo("counts");
    }

    /** The curve above at 0 and at 20 min, in A per W/m2 of 1000 W/m2. */
    @Test
    void drawsTheCourseThroughFourReadings() {
        day.minute(0).lit(cell, yard, "400 mV", "0.400 mA");
        day.minute(10).lit(cell, yard, "400 mV", "0.643 mA");
        day.minute(15).lit(cell, yard, "400 mV", "0.716 mA");
        assertThat(settling().course()).isEmpty();
        day.light(yard, "1000 W/m2");
        day.minute(20).lit(cell, yard, "400 mV", "0.768 mA");

        assertThat(settling().readings()).hasSize(4);
        assertThat(settling().state()).isEqualTo("settling");
        assertThat(settling().course().get(0).currentPerLight()).isCloseTo(0.400e-6, withinPercentage(2));
        assertThat(settling().course())
                .last()
                .satisfies(end -> assertThat(end.at()).isEqualTo(settling().comeBackAt()));
    }

    @Test
    void saysNothingOfACellThatStandsStill() {
        day.minute(0).lit(cell, yard, "400 mV", "0.900 mA");
        day.minute(10).lit(cell, yard, "400 mV", "0.902 mA");
        day.light(yard, "1000 W/m2");
        day.minute(20).lit(cell, yard, "400 mV", "0.898 mA");

        assertThat(notes()).extracting(Remark::key).noneMatch(key -> key.startsWith("standing.settling"));
    }

    /** As above, but the cell was filled anew after the third reading: one reading since then tells nothing yet. */
    @Test
    void countsSettlingFromTheLastRefillAndSaysThatThereWasOne() {
        day.minute(0).lit(cell, yard, "400 mV", "0.400 mA");
        day.minute(10).lit(cell, yard, "400 mV", "0.643 mA");
        day.minute(15).lit(cell, yard, "400 mV", "0.716 mA");
        day.minute(17).refill(cell);
        day.light(yard, "1000 W/m2");
        day.minute(20).lit(cell, yard, "400 mV", "0.768 mA");

        assertThat(notes()).extracting(Remark::key).noneMatch(key -> key.startsWith("standing.settling"));
        assertThat(remark("standing.refilled").values()).isEqualTo(Map.of("times", 1));
    }

    @Test
    void tellsALampThatFadesFromACellThatDoes() {
        day.minute(0).lit(cell, yard, "400 mV", "0.900 mA");
        day.minute(10).light(yard, "800 W/m2");
        day.lit(cell, yard, "400 mV", "0.720 mA");
        day.minute(20).light(yard, "640 W/m2");
        day.lit(cell, yard, "400 mV", "0.576 mA");

        assertThat(notes()).extracting(Remark::key).noneMatch(key -> key.startsWith("standing.settling"));
    }

    /** Twenty times the light and the current: a slope of 1, known to √2 · 6 % / ln 20 = 3 %. */
    @Test
    void saysThatTheCurrentFollowsTheLight() {
        var shade = day.sunnyStation("Shade");
        day.light(shade, "50.0 W/m2");
        day.lit(cell, shade, "300 mV", "45.0 uA");
        day.minute(5).lit(cell, yard, "400 mV", "0.900 mA");

        assertThat(remark("standing.linearity.held").values()).containsKey("percent");
    }

    /** Twenty times the light and ten times the current: 2^(ln 10 / ln 20) = 1.70 times the current for twice the light. */
    @Test
    void saysByHowMuchTheCurrentLagsBehindTheLight() {
        var shade = day.sunnyStation("Shade");
        day.light(shade, "50.0 W/m2");
        day.lit(cell, shade, "300 mV", "90.0 uA");
        day.minute(5).lit(cell, yard, "400 mV", "0.900 mA");

        assertThat(remark("standing.linearity.bent").values()).isEqualTo(Map.of("percent", 70.0));
    }

    @Test
    void keepsACellWaitingThatAnswersToTheSunAlone() {
        var bench = day.station("Bench", "coolLed", "luxMeter");
        day.light(bench, "2000 lx");
        day.lit(cell, bench, "0 mV", "0.0 uA");
        day.minute(5).lit(cell, yard, "300 mV", "0.090 mA");

        assertThat(result().standing()).isEqualTo("waiting");
        assertThat(result().remark()).isEqualTo(Remark.of("standing.oxideOnly"));
    }

    @Test
    void saysThatTheAnswerCameBackWithEachOpening() {
        day.minute(0).lit(cell, yard, "400 mV", "0.900 mA");
        day.toggles(cell, yard, "0 uA", "890 uA", "1 uA", "905 uA", "0 uA", "898 uA");

        assertThat(remark("standing.togglesHeld")).isEqualTo(Remark.of("standing.togglesHeld"));
        assertThat(result().standing()).isEqualTo("counts");
    }

    /** Changes of 895, 20 and 450 uA: their standard deviation is 438 uA, 96 % of the mean of 455 uA. */
    @Test
    void keepsACellWaitingWhoseAnswerDoesNotComeBack() {
        day.minute(0).lit(cell, yard, "400 mV", "0.900 mA");
        day.toggles(cell, yard, "0 uA", "895 uA", "0 uA", "20 uA", "0 uA", "450 uA");

        assertThat(result().standing()).isEqualTo("waiting");
        assertThat(result().remark()).isNotNull();
        assertThat(Objects.requireNonNull(result().remark()).key()).isEqualTo("standing.noResponse.toggleScatter");
        assertThat(Objects.requireNonNull(result().remark()).values()).containsEntry("value", 96.0);
    }

    private SettlingAnswer settling() {
        return leaderboards.settling(cells.find(cell).orElseThrow());
    }

    private static double number(Remark remark, String name) {
        return ((Number) Objects.requireNonNull(remark.values().get(name))).doubleValue();
    }

    private Remark remark(String key) {
        return notes().stream()
                .filter(it -> it.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError(key + " not among " + notes()));
    }

    private List<Remark> notes() {
        return result().notes();
    }

    private CellResultAnswer result() {
        return leaderboards.result(cells.find(cell).orElseThrow());
    }
}
