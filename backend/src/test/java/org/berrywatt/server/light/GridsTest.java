package org.berrywatt.server.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.contract.GridAnswer;
import org.berrywatt.contract.GridRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.contract.Typed;
import org.berrywatt.light.Uniformity;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class GridsTest {

    private static final String GRID = "/api/grids/{id}";
    private final UUID id = UUID.randomUUID();
    private final Bench bench;
    private final Api teacher;
    private final Stations stations;
    private final UUID lamp;

    @Autowired
    GridsTest(MockMvcTester server, JsonMapper json, Stations stations) {
        this.bench = new Bench(server, json);
        this.teacher = bench.teacher;
        this.stations = stations;
        this.lamp = bench.station("Lamp");
    }

    /** IEC 60904-9: (max - min)/(max + min) = (1000 - 900)/(1000 + 900) = 5.26 %, worked by hand: class C. */
    @Test
    void gradesNineReadingsOfASpot() {
        var grid = recorded("900", "950", "920", "960", "1000", "970", "910", "950", "930");
        assertThat(grid.nonUniformity()).isCloseTo(0.0526, within(5e-5));
        assertThat(grid.grade()).isEqualTo("C");
        assertThat(grid.columns()).isEqualTo(3);
        assertThat(grid.readings()).hasSize(9).contains(new Typed("1000", "lx"));
    }

    @Test
    void takesOneGridOnceHoweverOftenItIsSent() {
        var first = recorded("900", "1000");
        assertThat(recorded("900", "1000")).isEqualTo(first);
        teacher.problem(teacher.put(grid("900", "1010"), GRID, id), ProblemCode.ID_REUSED);
    }

    @Test
    void countsTheLatestGridAndKeepsTheEarlier() {
        recorded("500", "1000");
        teacher.answer(teacher.put(grid("900", "1100"), GRID, UUID.randomUUID()), GridAnswer.class);
        assertThat(shown().grids())
                .extracting(grid -> grid.readings().get(0).text())
                .containsExactly("500", "900");
        assertThat(uniformity().nonUniformity()).isCloseTo(0.1, within(1e-12));
        // JCGM 100:2008, 4.3.7: u = a/√3
        assertThat(stations.find(lamp).orElseThrow().placeUncertainty()).isCloseTo(0.1 / Math.sqrt(3), within(1e-12));
    }

    @Test
    void takesFivePerCentWhereNobodyReadAGrid() {
        // common practice, no source
        assertThat(stations.find(lamp).orElseThrow().placeUncertainty()).isEqualTo(0.05);
    }

    @ParameterizedTest(name = "{0} is refused with {1} at {2}")
    @CsvSource({
        "1000,                 calculation.listLength, readings",
        "1000;2o00,            quantity.notANumber,    readings[1]",
        "1000;0,               quantity.impossible,    readings[1]",
        "1000;40 W/m2,         quantity.wrongUnit,     readings[1]",
        "1000;400 V,           quantity.wrongUnit,     readings[1]",
    })
    void refusesAGridThatCannotBe(String readings, String code, String field) {
        var refused = teacher.put(grid(readings.split(";")), GRID, id);
        assertThat(refused).hasStatus(422);
        assertThat(teacher.problem(refused, code).field()).isEqualTo(field);
    }

    @Test
    void refusesMoreThanTwentyFivePlaces() {
        var many = Stream.generate(() -> "900").limit(26).toArray(String[]::new);
        teacher.problem(teacher.put(grid(many), GRID, id), ProblemCode.CALCULATION_LIST_LENGTH);
    }

    @Test
    void readsNoGridWhileTheDayIsClosed() {
        bench.setEntry(false);
        teacher.problem(teacher.put(grid("900", "1000"), GRID, id), ProblemCode.LABDAY_CLOSED);
    }

    private Uniformity uniformity() {
        return Objects.requireNonNull(stations.find(lamp).orElseThrow().uniformity());
    }

    private StationAnswer shown() {
        return teacher.answers(teacher.get("/api/labdays/{id}/stations", bench.day.id()), StationAnswer.class)
                .get(0);
    }

    private GridAnswer recorded(String... readings) {
        return teacher.answer(teacher.put(grid(readings), GRID, id), GridAnswer.class);
    }

    private GridRequest grid(String... readings) {
        List<Typed> typed =
                Arrays.stream(readings).map(text -> new Typed(text, "lx")).toList();
        return new GridRequest(lamp, typed, 3, Bench.NOTICED);
    }
}
