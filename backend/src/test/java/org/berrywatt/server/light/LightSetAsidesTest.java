package org.berrywatt.server.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.IrradianceAnswer;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SetAsideAnswer;
import org.berrywatt.contract.SetAsideRequest;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class LightSetAsidesTest {

    private static final String SET_ASIDE = "/api/light-set-asides/{id}";
    private static final String WHY = "A shadow lay over it";
    private final UUID id = UUID.randomUUID();
    private final Bench bench;
    private final Api teacher;
    private final UUID station;
    private final Stations stations;

    @Autowired
    LightSetAsidesTest(MockMvcTester server, JsonMapper json, Stations stations) {
        this.bench = new Bench(server, json);
        this.teacher = bench.teacher;
        this.stations = stations;
        this.station = bench.station("Lamp");
    }

    @Test
    void keepALightReadingOutUntilItIsTakenBack() {
        var hand = read("250");
        var good = read("2050");
        setAside(hand, "A hand over the meter");
        assertThat(valid()).containsExactly(2050.0);
        setAside(hand, null);
        assertThat(valid()).containsExactly(250.0, 2050.0);
        assertThat(shown().readings())
                .filteredOn(reading -> reading.id().equals(hand))
                .singleElement()
                .satisfies(reading -> assertThat(reading.setAside())
                        .extracting(SetAsideAnswer::reason, SetAsideAnswer::teacher)
                        .containsExactly(tuple("A hand over the meter", "Ms Alder"), tuple(null, "Ms Alder")));
        assertThat(good).isNotEqualTo(hand);
    }

    @Test
    void refuseToSetAsideWhatACorrectionHasReplaced() {
        var wrong = read("250");
        bench.setEntry(false);
        var right = new IrradianceRequest(station, new Typed("2050", "lx"), wrong, Bench.NOTICED);
        assertThat(teacher.put(right, "/api/irradiances/{id}", UUID.randomUUID()))
                .hasStatusOk();
        var refused = teacher.put(new SetAsideRequest(wrong, WHY), SET_ASIDE, id);
        assertThat(teacher.problem(refused, ProblemCode.REPLACED_ALREADY).field())
                .isEqualTo("readingId");
        var unknown = teacher.put(new SetAsideRequest(UUID.randomUUID(), WHY), SET_ASIDE, id);
        teacher.problem(unknown, ProblemCode.NOT_FOUND);
    }

    private UUID read(String lux) {
        var request = new IrradianceRequest(station, new Typed(lux, "lx"), null, Bench.NOTICED);
        return teacher.answer(teacher.put(request, "/api/irradiances/{id}", UUID.randomUUID()), IrradianceAnswer.class)
                .id();
    }

    private void setAside(UUID reading, @Nullable String reason) {
        assertThat(teacher.put(new SetAsideRequest(reading, reason), SET_ASIDE, UUID.randomUUID()))
                .hasStatusOk();
    }

    private List<Double> valid() {
        return stations.find(station).orElseThrow().readings().stream()
                .map(LightReading::valueSi)
                .toList();
    }

    private StationAnswer shown() {
        return teacher.answers(teacher.get("/api/labdays/{id}/stations", bench.day.id()), StationAnswer.class)
                .get(0);
    }
}
