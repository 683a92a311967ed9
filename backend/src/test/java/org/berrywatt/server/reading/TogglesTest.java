package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.ToggleAnswer;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class TogglesTest {

    private static final String READING = "/api/readings/{id}";
    private final Api team;
    private final UUID cell;
    private final UUID station;

    @Autowired
    TogglesTest(MockMvcTester server, JsonMapper json) {
        var bench = new Bench(server, json);
        team = bench.team("Sloe");
        cell = bench.cell(team, "C1");
        station = bench.station("Lamp");
    }

    @Test
    void takesCoveredAndOpenInTurn() {
        var answer = team.answer(put(currents("0", "45", "1", "46", "0", "44,5")), ReadingAnswer.class);

        assertThat(answer.toggles())
                .extracting(ToggleAnswer::lit, ToggleAnswer::typed, ToggleAnswer::currentA, ToggleAnswer::voltageV)
                .startsWith(
                        tuple(false, new Typed("0", "uA"), 0.0, null),
                        tuple(true, new Typed("45", "uA"), 4.5e-5, null));
        assertThat(team.answers(team.get("/api/cells/{id}/readings", cell), ReadingAnswer.class))
                .containsExactly(answer);
    }

    @Test
    void takesVoltagesAsWell() {
        var points = Stream.of("0", "300", "2", "301", "1", "299")
                .map(text -> new SweepPoint(null, new Typed(text, "mV"), null))
                .toList();
        var answer = team.answer(put(points), ReadingAnswer.class);
        assertThat(answer.toggles()).extracting(ToggleAnswer::voltageV).endsWith(0.001, 0.299);
    }

    @Test
    void refusesFewerThanThreeOpenings() {
        var problem = team.problem(put(currents("0", "45", "0", "45")), ProblemCode.TOGGLES_INCOMPLETE);
        assertThat(problem.value()).isEqualTo("4");
        assertThat(problem.limit()).isEqualTo("6 to 20");
    }

    @Test
    void namesTheNumberThatIsMissing() {
        var problem = team.problem(put(currents("0", "45", "", "45", "0", "45")), ProblemCode.QUANTITY_EMPTY);
        assertThat(problem.field()).isEqualTo("points[2].current");
    }

    private MvcTestResult put(List<SweepPoint> points) {
        var request = new ReadingRequest(cell, "toggles", station, null, null, points, false, null, Bench.NOTICED);
        return team.put(request, READING, UUID.randomUUID());
    }

    private static List<SweepPoint> currents(String... texts) {
        return Stream.of(texts)
                .map(text -> new SweepPoint(null, null, new Typed(text, "uA")))
                .toList();
    }
}
