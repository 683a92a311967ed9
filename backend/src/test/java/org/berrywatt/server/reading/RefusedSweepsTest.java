package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.berrywatt.server.reading.ReadingBench.row;

import java.util.stream.Stream;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class RefusedSweepsTest {

    private static final SweepPoint GOOD = row("10", "380", null);
    private final ReadingBench at;
    private final Readings readings;

    @Autowired
    RefusedSweepsTest(MockMvcTester server, JsonMapper json, Readings readings) {
        this.at = new ReadingBench(server, json);
        this.readings = readings;
    }

    @Test
    void asksAboutARowThatFollowsFromAnUnlikelyLoad() {
        var unlikely = at.asked(GOOD, GOOD, GOOD, GOOD, row("0.01", "380", null));
        var problem = at.refused(unlikely, "quantity.unusual");
        assertThat(problem.field()).isEqualTo("points[4].load");
        assertThat(problem.value()).isEqualTo("38000 µA");
    }

    @ParameterizedTest(name = "a row of load {0} kohm, {1} mV, {2} uA is refused with {3} at {4}")
    @CsvSource({
        "10, , , sweep.rowIncomplete, points[4]",
        ", 380, , sweep.rowIncomplete, points[4]",
        "10, 38o, , quantity.notANumber, points[4].voltage",
        "-10, 380, , quantity.impossible, points[4].load",
        "0, 380, , quantity.impossible, points[4].load",
        "0.001, 380, , quantity.impossible, points[4].load",
        "10, , 80000000, quantity.impossible, points[4].current",
    })
    void refusesARowThatCannotBe(
            @Nullable String kohm, @Nullable String millivolt, @Nullable String microamp, String code, String field) {
        var sweep = at.sweep(GOOD, GOOD, GOOD, GOOD, row(kohm, millivolt, microamp));
        assertThat(at.refused(sweep, code).field()).isEqualTo(field);
    }

    @Test
    void refusesASweepOfFewerThanFiveRows() {
        assertThat(at.refused(at.sweep(GOOD, GOOD), "sweep.tooShort").detail())
                .startsWith("The sweep has 2 rows; it needs 5 to 60.");
    }

    @ParameterizedTest(name = "{0} is refused with {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "-100 -4, -200 -3, -300 -2, -350 -1, -400 0 | sweep.wrongQuadrant | points[0]"
                        + " | Rows that deliver power, with voltage and current both above 0: 0; a curve needs a number in"
                        + " [3, ∞). If all are negative, swap the leads; otherwise check the rows, row 1 (-100 mV, -4 µA)"
                        + " first.",
                "300 2, 300 2, 300 2, 300 2, 300 2 | sweep.wrongQuadrant | | Rows that deliver power, with voltage and"
                        + " current both above 0: 1; a curve needs a number in [3, ∞).",
                "100 4, 200 3, 300 2, 100 4, 200 3 | sweep.tooFewLoads | points[3]"
                        + " | The rows lie at 3 different loads; a curve needs a number in [5, ∞). Measure at more loads,"
                        + " some near each end and some in between; row 4 (100 mV, 4 µA) has the load of an earlier row.",
                "300 5, 302 4, 304 3, 306 2, 308 1 | sweep.noSpread | points | All rows lie at nearly the same voltage or"
                        + " nearly the same current: from the smallest to the largest is 0.026 of the largest, and must be"
                        + " in [0.1, ∞).",
                "0 90, 100 85, 200 800, 300 70, 400 5 | sweep.notFalling | points[2] | The current does not fall",
                "100 0.1, 200 0.4, 300 0.9, 400 1.6, 500 2.5 | sweep.notFalling | points[4] | The current does not fall"
                        + " as the voltage rises, as it does for every cell under light: the fill factor or the ends of"
                        + " the curve come out at ",
            })
    void refusesASweepThatMakesNoCurve(String rows, String code, @Nullable String field, String sentence) {
        var problem = at.refused(at.sweep(rowsOf(rows)), code);
        assertThat(problem.detail()).startsWith(sentence).doesNotContain("{", "NaN");
        assertThat(problem.field()).startsWith(field == null ? "points" : field);
        assertThat(problem.limit()).startsWith(code.endsWith("notFalling") ? "(0" : "[");
        assertThat(at.recorded(readings)).isEmpty();
    }

    @ParameterizedTest(name = "a load typed as {0} ohm is refused with {1}")
    @CsvSource({
        "NaN, quantity.notANumber",
        "Infinity, quantity.notANumber",
        "∞, quantity.notANumber",
        "1e99, quantity.impossible",
        "1e999, quantity.notANumber",
        "-1, quantity.impossible",
        "1e-999, quantity.notANumber"
    })
    void refusesALoadThatIsNone(String text, String code) {
        var bad = new SweepPoint(new Typed(text, "ohm"), new Typed("380", "mV"), null);
        var problem = at.refused(at.sweep(GOOD, GOOD, GOOD, GOOD, bad), code);
        assertThat(problem.field()).isEqualTo("points[4].load");
        assertThat(problem.detail()).doesNotContain("{");
    }

    /** Rows as "mV µA", a comma between them. */
    private static SweepPoint[] rowsOf(String rows) {
        return Stream.of(rows.split(", "))
                .map(row -> row.split(" "))
                .map(row -> row(null, row[0], row[1]))
                .toArray(SweepPoint[]::new);
    }
}
