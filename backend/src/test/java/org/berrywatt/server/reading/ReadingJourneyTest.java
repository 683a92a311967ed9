package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class ReadingJourneyTest {

    private final Bench bench;

    @Autowired
    ReadingJourneyTest(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
    }

    @Test
    void takesAReadingFromTheMeterToTheRecord() {
        var team = bench.team("Sloe");
        var cell = bench.cell(team, "C1");
        var request =
                Bench.lightRequest(cell, bench.station("Window"), new Typed("412 mV", "V"), new Typed("0,35", "mA"));
        var answer = team.answer(team.put(request, "/api/readings/{id}", UUID.randomUUID()), ReadingAnswer.class);
        assertThat(answer.voltageV()).isEqualTo(0.412);
        assertThat(answer.currentA()).isEqualTo(0.35e-3);
    }
}
