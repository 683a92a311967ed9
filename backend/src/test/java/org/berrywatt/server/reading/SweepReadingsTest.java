package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.contract.CurvePoint;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class SweepReadingsTest {

    private static final String READING = "/api/readings/{id}";
    private final UUID id = UUID.randomUUID();
    private final Bench bench;
    private final Readings readings;
    private final Api team;
    private final UUID cell;
    private final UUID station;

    @Autowired
    SweepReadingsTest(MockMvcTester server, JsonMapper json, Readings readings) {
        this.bench = new Bench(server, json);
        this.readings = readings;
        this.team = bench.team("Sloe");
        this.cell = bench.cell(team, "C1");
        this.station = bench.station("Lamp");
    }

    @Test
    void asksAboutARowThatFollowsFromAnUnlikelyLoad() {
        var good = row("10", "380", null);
        var unlikely = new ReadingRequest(
                cell,
                "sweep",
                station,
                null,
                null,
                List.of(good, good, good, good, row("0.01", "380", null)),
                false,
                null,
                Bench.NOTICED);
        var problem = team.problem(team.put(unlikely, READING, id), ProblemCode.QUANTITY_UNUSUAL);
        assertThat(problem.field()).isEqualTo("points[4].load");
        assertThat(problem.value()).isEqualTo("38000 µA");
    }

    @Test
    void derivesTheMissingThirdOfEveryRowOfASweep() {
        var answer = answer(team.put(
                sweep(
                        row(null, "400", "0"),
                        row("10", "380", null),
                        row("1", null, "300"),
                        row("100", "30", "290"),
                        row("0", null, "310")),
                READING,
                id));
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
        assertThat(recorded().points().get(1)).isEqualTo(new RecordedPoint(10e3, new Measured(0.38, 1e-3), null));
        assertThat(recorded().points().get(2).voltage()).isNull();
        assertThat(recorded().points().get(0).loadOhm()).isNull();
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
        var good = row("10", "380", null);
        var refused = team.put(sweep(good, good, good, good, row(kohm, millivolt, microamp)), READING, id);
        assertThat(refused).hasStatus(422);
        assertThat(team.problem(refused, code).field()).isEqualTo(field);
    }

    @Test
    void refusesASweepOfFewerThanFiveRows() {
        var good = row("10", "380", null);
        var problem = team.problem(team.put(sweep(good, good), READING, id), ProblemCode.SWEEP_TOO_SHORT);
        assertThat(problem.detail()).startsWith("The sweep has 2 rows; it needs 5 to 60.");
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
        var refused = team.put(sweep(rowsOf(rows)), READING, id);
        assertThat(refused).hasStatus(422);
        var problem = team.problem(refused, code);
        assertThat(problem.detail()).startsWith(sentence).doesNotContain("{", "NaN");
        assertThat(problem.field()).startsWith(field == null ? "points" : field);
        assertThat(problem.limit()).startsWith(code.endsWith("notFalling") ? "(0" : "[");
        assertThat(readings.ofLabDay(bench.day.id())).isEmpty();
    }

    @Test
    void takesTheRowOfAShortCircuitWithoutAQuestion() {
        var request = new ReadingRequest(
                cell,
                "sweep",
                station,
                null,
                null,
                List.of(
                        row("0", null, "40"),
                        row("1", null, "38"),
                        row("3.3", "100", null),
                        row("10", "200", null),
                        row("100", "300", null)),
                false,
                null,
                Bench.NOTICED);
        assertThat(answer(team.put(request, READING, id)).points()).contains(new CurvePoint(0, 40e-6));
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
        var good = row("10", "380", null);
        var bad = new SweepPoint(new Typed(text, "ohm"), new Typed("380", "mV"), null);
        var problem = team.problem(team.put(sweep(good, good, good, good, bad), READING, id), code);
        assertThat(problem.field()).isEqualTo("points[4].load");
        assertThat(problem.detail()).doesNotContain("{");
    }

    private RecordedReading recorded() {
        return readings.ofLabDay(bench.day.id()).get(0);
    }

    private ReadingAnswer answer(MvcTestResult result) {
        return team.answer(result, ReadingAnswer.class);
    }

    private ReadingRequest sweep(SweepPoint... rows) {
        return new ReadingRequest(cell, "sweep", station, null, null, List.of(rows), true, null, Bench.NOTICED);
    }

    /** Rows as "mV µA", a comma between them. */
    private static SweepPoint[] rowsOf(String rows) {
        return Stream.of(rows.split(", "))
                .map(row -> row.split(" "))
                .map(row -> row(null, row[0], row[1]))
                .toArray(SweepPoint[]::new);
    }

    private static SweepPoint row(@Nullable String kohm, @Nullable String millivolt, @Nullable String microamp) {
        return new SweepPoint(typed(kohm, "kohm"), typed(millivolt, "mV"), typed(microamp, "uA"));
    }

    private static @Nullable Typed typed(@Nullable String text, String unit) {
        return text == null ? null : new Typed(text, unit);
    }
}
