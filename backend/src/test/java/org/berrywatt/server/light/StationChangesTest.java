package org.berrywatt.server.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.UUID;
import org.berrywatt.contract.FinalRequest;
import org.berrywatt.contract.IrradianceAnswer;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SetAsideRequest;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.contract.StationCorrectionRequest;
import org.berrywatt.contract.StationSettings;
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
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class StationChangesTest {

    private static final String CORRECTION = "/api/stations/{stationId}/corrections/{id}";
    private static final String SET_ASIDE = "/api/light-set-asides/{id}";
    private static final String WHY = "It was the LED lamp";
    private final UUID id = UUID.randomUUID();
    private final Bench bench;
    private final Api teacher;
    private final UUID station;
    private final Stations stations;

    @Autowired
    StationChangesTest(MockMvcTester server, JsonMapper json, Stations stations) {
        this.bench = new Bench(server, json);
        this.teacher = bench.teacher;
        this.stations = stations;
        this.station = bench.station("Lamp");
    }

    @Test
    void keepTheEarlierSettingsWithWhoWhenAndWhy() {
        var corrected = correct(id, new Typed("25", "cm"), WHY);
        assertThat(corrected.lamp()).isEqualTo("coolLed");
        assertThat(corrected.distanceM()).isEqualTo(0.25);
        assertThat(corrected.settings())
                .extracting(
                        StationSettings::lamp,
                        StationSettings::distance,
                        StationSettings::reason,
                        StationSettings::teacher)
                .containsExactly(
                        tuple("halogen", new Typed("30", "cm"), null, null),
                        tuple("coolLed", new Typed("25", "cm"), WHY, "Ms Alder"));
        assertThat(stations.find(station).orElseThrow().lamp().key()).isEqualTo("coolLed");
    }

    @Test
    void mendANameAndKeepTheEarlierOne() {
        var renamed = teacher.answer(teacher.put(called("Window sill"), CORRECTION, station, id), StationAnswer.class);
        assertThat(renamed.name()).isEqualTo("Window sill");
        assertThat(renamed.settings())
                .extracting(StationSettings::name, StationSettings::reason)
                .containsExactly(tuple("Lamp", null), tuple("Window sill", WHY));
        assertThat(stations.find(station).orElseThrow().name()).isEqualTo("Window sill");
    }

    @Test
    void refuseANameThatAnotherStationHasByNowAndFreeTheEarlierOne() {
        bench.station("Yard");
        var refused = teacher.put(called("yard"), CORRECTION, station, id);
        assertThat(teacher.problem(refused, ProblemCode.NAME_TAKEN).field()).isEqualTo("name");
        assertThat(teacher.put(called("Window sill"), CORRECTION, station, id)).hasStatusOk();
        assertThat(teacher.put(called("LAMP"), CORRECTION, bench.station("Lamp"), UUID.randomUUID()))
                .hasStatusOk();
    }

    @Test
    void happenOnceHoweverOftenTheyAreSentAndTheLatestHolds() {
        var first = correct(id, new Typed("25", "cm"), WHY);
        assertThat(correct(id, new Typed("25", "cm"), WHY)).isEqualTo(first);
        correct(UUID.randomUUID(), new Typed("26", "cm"), "The ruler slipped");
        assertThat(correct(id, new Typed("25", "cm"), WHY).distanceM()).isEqualTo(0.26);
        var other = teacher.put(correction("coolLed", "luxMeter", null, WHY), CORRECTION, station, id);
        teacher.problem(other, ProblemCode.ID_REUSED);
    }

    @ParameterizedTest(name = "lamp {0}, instrument {1}, distance {2}, reason {3} is refused with {4} at {5}")
    @CsvSource({
        "moon, luxMeter, 25, Slip, choice.unknown, lamp",
        "halogen, thumb, 25, Slip, choice.unknown, instrument",
        "halogen, luxMeter, -25, Slip, quantity.impossible, distance",
        "halogen, luxMeter, 25, , value.missing, reason",
        "halogen, luxMeter, 25, ' ', text.empty, reason",
    })
    void areRefusedWhereTheyCannotBe(
            String lamp, String instrument, String distance, @Nullable String reason, String code, String field) {
        var request = correction(lamp, instrument, new Typed(distance, "cm"), reason);
        var refused = teacher.put(request, CORRECTION, station, id);
        assertThat(refused).hasStatus(422);
        assertThat(teacher.problem(refused, code).field()).isEqualTo(field);
        assertThat(shown().settings()).hasSize(1);
    }

    @Test
    void areForTeachersUntilResultsAreFinal() {
        var request = correction("coolLed", "luxMeter", null, WHY);
        assertThat(bench.team("Sloe").put(request, CORRECTION, station, id)).hasStatus(403);
        bench.setEntry(false);
        assertThat(teacher.put(request, CORRECTION, station, id)).hasStatusOk();
        var light = read("2050");
        assertThat(teacher.put(new FinalRequest(true, null), "/api/labdays/{id}/final", bench.day.id()))
                .hasStatusOk();
        var late = teacher.put(request, CORRECTION, station, UUID.randomUUID());
        teacher.problem(late, ProblemCode.LABDAY_FINAL);
        var aside = teacher.put(new SetAsideRequest(light, WHY), SET_ASIDE, UUID.randomUUID());
        teacher.problem(aside, ProblemCode.LABDAY_FINAL);
        assertThat(teacher.put(request, CORRECTION, UUID.randomUUID(), UUID.randomUUID()))
                .hasStatus(404);
    }

    private StationAnswer correct(UUID correctionId, Typed distance, String reason) {
        var request = correction("coolLed", "luxMeter", distance, reason);
        return teacher.answer(teacher.put(request, CORRECTION, station, correctionId), StationAnswer.class);
    }

    private static StationCorrectionRequest correction(
            String lamp, String instrument, @Nullable Typed distance, @Nullable String reason) {
        return new StationCorrectionRequest("Lamp", lamp, instrument, distance, null, reason);
    }

    private static StationCorrectionRequest called(String name) {
        return new StationCorrectionRequest(name, "halogen", "luxMeter", new Typed("30", "cm"), null, WHY);
    }

    private UUID read(String lux) {
        bench.setEntry(true);
        var request = new IrradianceRequest(station, new Typed(lux, "lx"), null, Bench.NOTICED);
        return teacher.answer(teacher.put(request, "/api/irradiances/{id}", UUID.randomUUID()), IrradianceAnswer.class)
                .id();
    }

    private StationAnswer shown() {
        return teacher.answers(teacher.get("/api/labdays/{id}/stations", bench.day.id()), StationAnswer.class)
                .get(0);
    }
}
