package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.berrywatt.server.reading.ReadingBench.row;

import org.berrywatt.contract.CurvePoint;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class SweepReadingsTest {

    private final ReadingBench at;
    private final Readings readings;

    @Autowired
    SweepReadingsTest(MockMvcTester server, JsonMapper json, Readings readings) {
        this.at = new ReadingBench(server, json);
        this.readings = readings;
    }

    @Test
    void derivesTheMissingThirdOfEveryRowOfASweep() {
        var answer = at.accepted(at.sweep(
                row(null, "400", "0"),
                row("10", "380", null),
                row("1", null, "300"),
                row("100", "30", "290"),
                row("0", null, "310")));
        assertThat(answer.points())
                .usingRecursiveFieldByFieldElementComparator()
                .usingComparatorForType((a, b) -> Math.abs(a - b) < 1e-12 ? 0 : 1, Double.class)
                .containsExactly(
                        new CurvePoint(0.4, 0),
                        new CurvePoint(0.38, 38e-6),
                        new CurvePoint(0.3, 300e-6),
                        new CurvePoint(0.03, 290e-6),
                        new CurvePoint(0, 310e-6));
        // only what was read is kept for the science: the second row has no current, the third no voltage
        var recorded = at.recorded(readings).get(0).points();
        assertThat(recorded.get(1)).isEqualTo(new RecordedPoint(10e3, new Measured(0.38, 1e-3), null));
        assertThat(recorded.get(2).voltage()).isNull();
        assertThat(recorded.get(0).loadOhm()).isNull();
    }

    @Test
    void givesTheRowsBackAsTheyWereTyped() {
        var rows = new SweepPoint[] {
            row("0", null, "40"),
            row("1", "40", "38"),
            row("3.3", "100", null),
            row("10", "200", null),
            row("100", "300", null)
        };
        assertThat(at.accepted(at.sweep(rows)).rows()).containsExactly(rows);
    }

    @Test
    void takesTheRowOfAShortCircuitWithoutAQuestion() {
        var request = at.asked(
                row("0", null, "40"),
                row("1", null, "38"),
                row("3.3", "100", null),
                row("10", "200", null),
                row("100", "300", null));
        assertThat(at.accepted(request).points()).contains(new CurvePoint(0, 40e-6));
    }
}
