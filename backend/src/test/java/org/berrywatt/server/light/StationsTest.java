package org.berrywatt.server.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.IrradianceAnswer;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.contract.StationRequest;
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
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class StationsTest {

    private static final String STATION = "/api/stations/{id}";
    private static final String LIGHT = "/api/irradiances/{id}";
    private final UUID id = UUID.randomUUID();
    private final Bench bench;
    private final Api teacher;
    private final Stations stations;

    @Autowired
    StationsTest(MockMvcTester server, JsonMapper json, Stations stations) {
        this.bench = new Bench(server, json);
        this.teacher = bench.teacher;
        this.stations = stations;
    }

    @Test
    void setsUpAStationOnceHoweverOftenItIsSent() {
        var request = station("Lamp", "halogen", "luxMeter", new Typed("30", "cm"), new Typed("10", "deg"));
        var first = teacher.answer(teacher.put(request, STATION, id), StationAnswer.class);
        assertThat(teacher.answer(teacher.put(request, STATION, id), StationAnswer.class))
                .isEqualTo(first);
        assertThat(first.distanceM()).isEqualTo(0.3);
        assertThat(first.angleDeg()).isCloseTo(10, within(1e-9));
        teacher.problem(
                teacher.put(station("Other", "halogen", "luxMeter", null, null), STATION, id), ProblemCode.ID_REUSED);
    }

    @Test
    void setsUpStationsWhileTheDayIsClosedButReadsNoLight() {
        bench.setEntry(false);
        var station = bench.station("Window");
        teacher.problem(teacher.put(light(station, "450", "lx", null), LIGHT, id), ProblemCode.LABDAY_CLOSED);
    }

    @Test
    void refusesANameThatAnotherStationHas() {
        bench.station("Window");
        var refused = teacher.put(station("WINDOW", "window", "luxMeter", null, null), STATION, id);
        assertThat(refused).hasStatus(409);
        teacher.problem(refused, ProblemCode.NAME_TAKEN);
    }

    @ParameterizedTest(name = "lamp {0}, instrument {1}, distance {2}, angle {3} is refused with {4} at {5}")
    @CsvSource({
        "moon, luxMeter, 30, 0, choice.unknown, lamp",
        "halogen, thumb, 30, 0, choice.unknown, instrument",
        "halogen, luxMeter, -30, 0, quantity.impossible, distance",
        "halogen, luxMeter, far, 0, quantity.notANumber, distance",
        "halogen, luxMeter, 30, 95, quantity.impossible, angle",
    })
    void refusesAStationThatCannotBe(
            String lamp, String instrument, String distance, String angle, String code, String field) {
        var request = station("Lamp", lamp, instrument, new Typed(distance, "cm"), new Typed(angle, "deg"));
        var refused = teacher.put(request, STATION, id);
        assertThat(refused).hasStatus(422);
        assertThat(teacher.problem(refused, code).field()).isEqualTo(field);
    }

    @Test
    void recordsTheLightAsReadAndTellsTheIrradianceBehindIt() {
        var station = bench.station("Lamp");
        var light = read(station, "2050", "lx");
        assertThat(light.reading()).isEqualTo(new Typed("2050", "lx"));
        // halogen lamps give some 20 lm per watt of radiation over their whole band (common practice, no source)
        assertThat(light.totalIrradianceWm2().value()).isBetween(2050 / 30.0, 2050 / 12.0);
        assertThat(light.totalIrradianceWm2().low())
                .isLessThan(light.totalIrradianceWm2().value());
    }

    @Test
    void tellsWhatTheLightIsToEachDye() {
        var station = bench.station("Lamp");
        assertThat(shown(station).dyes()).isEmpty();
        read(station, "2050", "lx");
        // a halogen lamp is mostly red and infrared: per lux red berries get about what sunlight gives them (from
        // memory)
        var berries = shown(station).dyes().stream()
                .filter(light -> light.dye().equals("anthocyanin"))
                .findFirst()
                .orElseThrow();
        assertThat(berries.effectiveIrradianceWm2().value()).isBetween(0.7 * 2050 / 110, 1.3 * 2050 / 110);
    }

    @Test
    void recordsALightReadingOnceHoweverOftenItIsSent() {
        var station = bench.station("Lamp");
        var request = light(station, "2050", "lx", null);
        var first = teacher.answer(teacher.put(request, LIGHT, id), IrradianceAnswer.class);
        assertThat(teacher.answer(teacher.put(request, LIGHT, id), IrradianceAnswer.class))
                .isEqualTo(first);
        assertThat(stations.find(station).orElseThrow().readings()).hasSize(1);
        teacher.problem(teacher.put(light(station, "2051", "lx", null), LIGHT, id), ProblemCode.ID_REUSED);
    }

    @Test
    void keepsWhatACorrectionReplacesAndCountsWithTheCorrection() {
        var station = bench.station("Lamp");
        var wrong = read(station, "250", "lx");
        var right = teacher.answer(
                teacher.put(light(station, "2.05 klx", null, wrong.id()), LIGHT, id), IrradianceAnswer.class);
        assertThat(shown(station).readings())
                .extracting(IrradianceAnswer::id, IrradianceAnswer::replacedBy)
                .containsExactly(tuple(wrong.id(), right.id()), tuple(right.id(), null));
        assertThat(stations.find(station).orElseThrow().readings())
                .extracting(LightReading::valueSi)
                .containsExactly(2050.0);
    }

    @Test
    void letsAReadingBeCorrectedOnce() {
        var station = bench.station("Lamp");
        var wrong = read(station, "250", "lx");
        assertThat(AtOnce.statuses(List.of(
                        () -> teacher.put(light(station, "2050", "lx", wrong.id()), LIGHT, UUID.randomUUID()),
                        () -> teacher.put(light(station, "2060", "lx", wrong.id()), LIGHT, UUID.randomUUID()))))
                .containsExactlyInAnyOrder(200, 409);
        var late = teacher.put(light(station, "2070", "lx", wrong.id()), LIGHT, UUID.randomUUID());
        teacher.problem(late, ProblemCode.REPLACED_ALREADY);
    }

    @ParameterizedTest(name = "light typed as {0} {1} is refused with {2}: {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "2o50    | lx  | quantity.notANumber  | “2o50” is not a number.",
                "-5      | lx  | quantity.impossible  | “-5 lx” is not possible here; it must lie in [0, 250000] lx.",
                "0       | lx  | light.belowResolution | A display of 0 lx says that the light is below its last digit, < 1 lx,",
                "0.00 W/m2 | lx | light.belowResolution | A display of 0.00 W/m2 says that the light is below its last digit,"
                        + " < 0.01 W/m²,",
                "'0,0'   | klx | light.belowResolution | A display of 0,0 klx says that the light is below its last digit,"
                        + " < 0.1 klx,",
                "400 V   | lx  | quantity.wrongUnit   | “V” has a unit of another kind.",
                "5 suns  | lx  | quantity.unknownUnit | The unit in “suns” is not known here.",
                "1,234   | lx  | quantity.ambiguous   | “1,234” can be read in more than one way.",
                "9000    | Wm2 | quantity.impossible  | “9000 W/m²” is not possible here; it must lie in [0, 2000] W/m².",
            })
    void refusesLightThatCannotBe(String text, String unit, String code, String sentence) {
        var refused = teacher.put(light(bench.station("Lamp"), text, unit, null), LIGHT, id);
        assertThat(refused).hasStatus(422);
        var problem = teacher.problem(refused, code);
        assertThat(problem.field()).isEqualTo("reading");
        assertThat(problem.detail()).startsWith(sentence);
    }

    @Test
    void offersBothReadingsOfAnAmbiguousNumber() {
        var refused = teacher.put(light(bench.station("Lamp"), "1,234", "lx", null), LIGHT, id);
        assertThat(teacher.problem(refused, ProblemCode.QUANTITY_AMBIGUOUS).choices())
                .containsExactlyInAnyOrder(new Typed("01.234", "lx"), new Typed("1234", "lx"));
    }

    @Test
    void refusesLightOfAStationThatIsNotThere() {
        var unknown = teacher.put(light(UUID.randomUUID(), "450", "lx", null), LIGHT, id);
        assertThat(unknown).hasStatus(422);
        assertThat(teacher.problem(unknown, ProblemCode.STATION_MISSING).field())
                .isEqualTo("stationId");
    }

    @Test
    void showsStationsToTheTeamsOfTheDayOnly() {
        var station = bench.station("Lamp");
        var team = bench.team("Sloe");
        assertThat(team.answers(team.get("/api/labdays/{id}/stations", bench.day.id()), StationAnswer.class))
                .extracting(StationAnswer::id)
                .containsExactly(station);
    }

    private StationAnswer shown(UUID station) {
        return teacher.answers(teacher.get("/api/labdays/{id}/stations", bench.day.id()), StationAnswer.class).stream()
                .filter(shown -> shown.id().equals(station))
                .findFirst()
                .orElseThrow();
    }

    private IrradianceAnswer read(UUID station, String text, String unit) {
        return teacher.answer(
                teacher.put(light(station, text, unit, null), LIGHT, UUID.randomUUID()), IrradianceAnswer.class);
    }

    private StationRequest station(
            String name, String lamp, String instrument, @Nullable Typed distance, @Nullable Typed angle) {
        return new StationRequest(bench.day.id(), name, lamp, instrument, distance, angle);
    }

    private static IrradianceRequest light(UUID station, String text, @Nullable String unit, @Nullable UUID replaces) {
        return new IrradianceRequest(station, new Typed(text, unit), replaces, Bench.NOTICED);
    }
}
