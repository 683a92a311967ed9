package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.CurvePoint;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.AtOnce;
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
class ReadingsTest {

    private static final String READING = "/api/readings/{id}";
    private static final Typed MICROAMPS = new Typed("40", "uA");
    private final UUID id = UUID.randomUUID();
    private final Bench bench;
    private final Readings readings;
    private final Api team;
    private final UUID cell;
    private final UUID station;

    @Autowired
    ReadingsTest(MockMvcTester server, JsonMapper json, Readings readings) {
        this.bench = new Bench(server, json);
        this.readings = readings;
        this.team = bench.team("Sloe");
        this.cell = bench.cell(team, "C1");
        this.station = bench.station("Lamp");
    }

    @ParameterizedTest(name = "{0} beside {1} is {2} V, known to {3} V")
    @CsvSource({"60 mV, V, 0.06, 0.001", "'0,06', V, 0.06, 0.01", "60.0, mV, 0.06, 0.0001", "-12, mV, -0.012, 0.001"})
    void keepsWhatTheMeterShowedWithTheResolutionOfItsLastDigit(String text, String unit, double volt, double step) {
        var answer = answer(team.put(light(new Typed(text, unit), MICROAMPS), READING, id));
        assertThat(answer.voltageV()).isCloseTo(volt, within(1e-15));
        assertThat(answer.voltage()).extracting(Typed::text).isEqualTo(text);
        assertThat(recorded().voltage()).isEqualTo(new Measured(volt, step));
        assertThat(recorded().current()).isEqualTo(new Measured(40e-6, 1e-6));
    }

    @Test
    void acceptsAReadingOnceHoweverOftenItIsSent() {
        var request = light(new Typed("412", "mV"), MICROAMPS);
        var first = answer(team.put(request, READING, id));
        assertThat(answer(team.put(request, READING, id))).isEqualTo(first);
        assertThat(readings.ofLabDay(bench.day.id())).hasSize(1);
    }

    @Test
    void acceptsAReadingOnceWhenTwoCopiesArriveAtTheSameMoment() {
        var request = light(new Typed("412", "mV"), MICROAMPS);
        assertThat(AtOnce.statuses(List.of(() -> team.put(request, READING, id), () -> team.put(request, READING, id))))
                .containsExactly(200, 200);
        assertThat(readings.ofLabDay(bench.day.id())).hasSize(1);
    }

    @Test
    void refusesAnotherReadingUnderTheSameId() {
        team.put(light(new Typed("412", "mV"), MICROAMPS), READING, id);
        var other = team.put(light(new Typed("413", "mV"), MICROAMPS), READING, id);
        assertThat(other).hasStatus(409);
        team.problem(other, ProblemCode.ID_REUSED);
    }

    @Test
    void acceptsALightReadingBeforeTheStationsLightIsRead() {
        assertThat(team.put(light(new Typed("412", "mV"), MICROAMPS), READING, id))
                .hasStatusOk();
    }

    @Test
    void acceptsADarkCheckWithoutAStation() {
        var dark = answer(team.put(Bench.darkRequest(cell, new Typed("3", "mV")), READING, id));
        assertThat(dark.kind()).isEqualTo("dark");
        assertThat(dark.stationId()).isNull();
    }

    @Test
    void keepsWhatACorrectionReplacesAndCountsWithTheCorrection() {
        var wrong = answer(team.put(light(new Typed("142", "mV"), MICROAMPS), READING, UUID.randomUUID()));
        var right = answer(team.put(correction(wrong.id(), "412"), READING, id));
        assertThat(team.answers(team.get("/api/cells/{id}/readings", cell), ReadingAnswer.class))
                .extracting(ReadingAnswer::id, ReadingAnswer::voltageV, ReadingAnswer::replacedBy)
                .containsExactly(tuple(wrong.id(), 0.142, right.id()), tuple(right.id(), 0.412, null));
        assertThat(readings.ofLabDay(bench.day.id()))
                .extracting(RecordedReading::id)
                .containsExactly(right.id());
    }

    @Test
    void answersTheReplacedReadingAgainWithTheNameOfItsCorrection() {
        var request = light(new Typed("142", "mV"), MICROAMPS);
        team.put(request, READING, id);
        var right = answer(team.put(correction(id, "412"), READING, UUID.randomUUID()));
        assertThat(answer(team.put(request, READING, id)).replacedBy()).isEqualTo(right.id());
    }

    @Test
    void letsAReadingBeCorrectedOnce() {
        team.put(light(new Typed("142", "mV"), MICROAMPS), READING, id);
        assertThat(AtOnce.statuses(List.of(
                        () -> team.put(correction(id, "412"), READING, UUID.randomUUID()),
                        () -> team.put(correction(id, "421"), READING, UUID.randomUUID()))))
                .containsExactlyInAnyOrder(200, 409);
        var late = team.put(correction(id, "422"), READING, UUID.randomUUID());
        team.problem(late, ProblemCode.REPLACED_ALREADY);
    }

    @Test
    void refusesToReplaceAReadingOfAnotherCell() {
        var other = bench.cell(team, "C2");
        var elsewhere = Bench.darkRequest(other, new Typed("3", "mV"));
        team.put(elsewhere, READING, id);
        team.problem(team.put(correction(id, "412"), READING, UUID.randomUUID()), ProblemCode.NOT_FOUND);
    }

    @ParameterizedTest(name = "voltage typed as {0} {1} is refused with {2}: {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "''       | mV | quantity.empty       | The number is missing.",
                "4l2      | mV | quantity.notANumber  | “4l2” is not a number.",
                "400      | V  | quantity.impossible  | “400 V” is not possible here; it must lie in [-3, 3] V."
                        + " Did you mean 400 mV?",
                "400 V    | mV | quantity.impossible  | “400 V” is not possible here; it must lie in [-3, 3] V."
                        + " Did you mean 400 mV?",
                "400 lx   | mV | quantity.wrongUnit   | “lx” has a unit of another kind. Choose one of: V, mV, µV.",
                "400      | lx | quantity.wrongUnit   | “lx” has a unit of another kind. Choose one of: V, mV, µV.",
                "4 volks  | mV | quantity.unknownUnit | The unit in “volks” is not known here. Choose one of: V, mV, µV.",
                "412      |    | quantity.unknownUnit | The unit in “412” is not known here. Choose one of: V, mV, µV.",
                "NaN      | mV | quantity.notANumber  | “NaN” is not a number.",
                "1e99     | mV | quantity.impossible  | “1",
                "2        | V  | quantity.unusual     | “2 V” is possible but unusual; most lie in [-0.9, 0.9] V."
                        + " Did you mean 2 mV?",
            })
    void refusesAVoltageThatCannotBe(String text, @Nullable String unit, String code, String sentence) {
        var refused = team.put(light(new Typed(text, unit), MICROAMPS), READING, id);
        assertThat(refused).hasStatus(422);
        var problem = team.problem(refused, code);
        assertThat(problem.field()).isEqualTo("voltage");
        assertThat(problem.detail()).startsWith(sentence);
        assertThat(readings.ofLabDay(bench.day.id())).isEmpty();
    }

    @Test
    void acceptsAnUnusualNumberThatItsWriterConfirms() {
        var asked = team.problem(
                team.put(light(new Typed("1.2", "V"), MICROAMPS), READING, id), ProblemCode.QUANTITY_UNUSUAL);
        assertThat(asked.limit()).isEqualTo("[-0.9, 0.9] V");
        assertThat(asked.detail()).endsWith("if the meter really shows it, confirm and send again.");
        var confirmed = new ReadingRequest(
                cell, "light", station, new Typed("1.2", "V"), MICROAMPS, null, true, null, Bench.NOTICED);
        assertThat(answer(team.put(confirmed, READING, id)).voltageV()).isEqualTo(1.2);
    }

    @Test
    void offersTheUnitThatWasProbablyMeant() {
        var asked = team.problem(
                team.put(light(new Typed("412", "V"), MICROAMPS), READING, id), ProblemCode.QUANTITY_IMPOSSIBLE);
        assertThat(asked.value()).isEqualTo("412 V");
        assertThat(asked.choices()).containsExactly(new Typed("412", "mV"));
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
    void acceptsNoImpossibleNumberHoweverConfirmed() {
        var confirmed = new ReadingRequest(
                cell, "light", station, new Typed("400", "V"), MICROAMPS, null, true, null, Bench.NOTICED);
        team.problem(team.put(confirmed, READING, id), ProblemCode.QUANTITY_IMPOSSIBLE);
    }

    @Test
    void refusesALightReadingWithoutAStation() {
        var request = new ReadingRequest(
                cell, "light", null, new Typed("412", "mV"), MICROAMPS, null, false, null, Bench.NOTICED);
        var problem = team.problem(team.put(request, READING, id), ProblemCode.STATION_MISSING);
        assertThat(problem.detail()).isEqualTo("The light station is missing. Choose the station where the cell lies.");
        assertThat(problem.field()).isEqualTo("stationId");
    }

    @Test
    void refusesAStationOfAnotherDay() {
        var elsewhere = new Bench(team.server(), team.json()).station("Lamp");
        var request = Bench.lightRequest(cell, elsewhere, new Typed("412", "mV"), MICROAMPS);
        team.problem(team.put(request, READING, id), ProblemCode.STATION_MISSING);
    }

    @Test
    void refusesAKindOfReadingThatIsNone() {
        var request = new ReadingRequest(cell, "smell", null, null, null, null, false, null, Bench.NOTICED);
        var problem = team.problem(team.put(request, READING, id), ProblemCode.CHOICE_UNKNOWN);
        assertThat(problem.limit()).isEqualTo("dark, light, sweep");
    }

    @Test
    void refusesALightReadingWithoutItsCurrent() {
        var request = new ReadingRequest(
                cell, "light", station, new Typed("412", "mV"), null, null, false, null, Bench.NOTICED);
        assertThat(team.problem(team.put(request, READING, id), ProblemCode.VALUE_MISSING)
                        .field())
                .isEqualTo("current");
    }

    @Test
    void takesNothingFromATeamNorTheTeacherOnceTheDayIsClosedButAnswersWhatItTookBefore() {
        var request = light(new Typed("412", "mV"), MICROAMPS);
        var first = answer(team.put(request, READING, id));
        bench.setEntry(false);
        assertThat(answer(team.put(request, READING, id))).isEqualTo(first);
        for (var caller : List.of(team, bench.teacher)) {
            var late = caller.put(light(new Typed("413", "mV"), MICROAMPS), READING, UUID.randomUUID());
            assertThat(late).hasStatus(409);
            assertThat(caller.problem(late, ProblemCode.LABDAY_CLOSED).detail())
                    .isEqualTo("This lab day is closed, so nothing more can be entered."
                            + " Ask the teacher to open it again.");
        }
        bench.setEntry(true);
        assertThat(team.put(light(new Typed("413", "mV"), MICROAMPS), READING, UUID.randomUUID()))
                .hasStatusOk();
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

    private RecordedReading recorded() {
        return readings.ofLabDay(bench.day.id()).get(0);
    }

    private ReadingAnswer answer(MvcTestResult result) {
        return team.answer(result, ReadingAnswer.class);
    }

    private ReadingRequest light(Typed voltage, Typed current) {
        return Bench.lightRequest(cell, station, voltage, current);
    }

    private ReadingRequest correction(UUID replaces, String millivolt) {
        return new ReadingRequest(
                cell, "light", station, new Typed(millivolt, "mV"), MICROAMPS, null, false, replaces, Bench.NOTICED);
    }

    private ReadingRequest sweep(SweepPoint... rows) {
        return new ReadingRequest(cell, "sweep", station, null, null, List.of(rows), true, null, Bench.NOTICED);
    }

    private static SweepPoint row(@Nullable String kohm, @Nullable String millivolt, @Nullable String microamp) {
        return new SweepPoint(typed(kohm, "kohm"), typed(millivolt, "mV"), typed(microamp, "uA"));
    }

    private static @Nullable Typed typed(@Nullable String text, String unit) {
        return text == null ? null : new Typed(text, unit);
    }
}
