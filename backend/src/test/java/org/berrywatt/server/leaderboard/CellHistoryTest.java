package org.berrywatt.server.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.CellResultAnswer;
import org.berrywatt.contract.Remark;
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

    @Test
    void saysNothingOfACellThatStandsStill() {
        day.minute(0).lit(cell, yard, "400 mV", "0.900 mA");
        day.minute(10).lit(cell, yard, "400 mV", "0.902 mA");
        day.light(yard, "1000 W/m2");
        day.minute(20).lit(cell, yard, "400 mV", "0.898 mA");

        assertThat(notes()).extracting(Remark::key).noneMatch(key -> key.startsWith("standing.settling"));
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
