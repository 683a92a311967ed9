package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.ToggleAnswer;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class TogglesTest {

    private final ReadingBench at;

    @Autowired
    TogglesTest(MockMvcTester server, JsonMapper json) {
        at = new ReadingBench(server, json);
    }

    @Test
    void takesCoveredAndOpenInTurn() {
        var answer = at.accepted(toggles(currents("0", "45", "1", "46", "0", "44,5")));

        assertThat(answer.toggles())
                .extracting(ToggleAnswer::lit, ToggleAnswer::typed, ToggleAnswer::currentA, ToggleAnswer::voltageV)
                .startsWith(
                        tuple(false, new Typed("0", "uA"), 0.0, null),
                        tuple(true, new Typed("45", "uA"), 4.5e-5, null));
        assertThat(at.listed(at.team)).containsExactly(answer);
    }

    @Test
    void takesVoltagesAsWell() {
        var points = Stream.of("0", "300", "2", "301", "1", "299")
                .map(text -> new SweepPoint(null, new Typed(text, "mV"), null))
                .toList();
        var answer = at.accepted(toggles(points));
        assertThat(answer.toggles()).extracting(ToggleAnswer::voltageV).endsWith(0.001, 0.299);
    }

    @Test
    void refusesFewerThanThreeOpenings() {
        var problem = at.refused(toggles(currents("0", "45", "0", "45")), "toggles.incomplete");
        assertThat(problem.value()).isEqualTo("4");
        assertThat(problem.limit()).isEqualTo("6 to 20");
    }

    @Test
    void namesTheNumberThatIsMissing() {
        var problem = at.refused(toggles(currents("0", "45", "", "45", "0", "45")), "quantity.empty");
        assertThat(problem.field()).isEqualTo("points[2].current");
    }

    private ReadingRequest toggles(List<SweepPoint> points) {
        return new ReadingRequest(
                at.cell, "toggles", at.station, null, null, null, null, points, false, null, null, Bench.NOTICED);
    }

    private static List<SweepPoint> currents(String... texts) {
        return Stream.of(texts)
                .map(text -> new SweepPoint(null, null, new Typed(text, "uA")))
                .toList();
    }
}
