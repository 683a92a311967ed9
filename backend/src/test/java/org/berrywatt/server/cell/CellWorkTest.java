package org.berrywatt.server.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.UUID;
import org.berrywatt.contract.CellAnswer;
import org.berrywatt.contract.CellEventAnswer;
import org.berrywatt.contract.CellEventRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class CellWorkTest {

    private static final String EVENT = "/api/cell-events/{id}";
    private final Bench bench;
    private final Api team;
    private final UUID cell;

    @Autowired
    CellWorkTest(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
        team = bench.team("Sloe");
        cell = bench.cell(team, "C1");
    }

    @Test
    void tellsOfRefillsAndRepairsInTheirOrder() {
        put(new CellEventRequest(cell, "refill", "one drop", Bench.NOTICED));
        put(new CellEventRequest(cell, "repair", " ", Bench.NOTICED));

        assertThat(shown().events())
                .extracting(CellEventAnswer::kind, CellEventAnswer::note)
                .containsExactly(tuple("refill", "one drop"), tuple("repair", null));
    }

    @Test
    void recordsARefillOnceHoweverOftenItIsSent() {
        var id = UUID.randomUUID();
        var refill = new CellEventRequest(cell, "refill", null, Bench.NOTICED);
        var first = team.answer(team.put(refill, EVENT, id), CellEventAnswer.class);

        assertThat(team.answer(team.put(refill, EVENT, id), CellEventAnswer.class))
                .isEqualTo(first);
        assertThat(shown().events()).containsExactly(first);
    }

    @Test
    void refusesAKindOfWorkThatItDoesNotKnow() {
        var polish = new CellEventRequest(cell, "polish", null, Bench.NOTICED);
        var problem = team.problem(team.put(polish, EVENT, UUID.randomUUID()), ProblemCode.CHOICE_UNKNOWN);
        assertThat(problem.field()).isEqualTo("kind");
        assertThat(problem.limit()).isEqualTo("refill, repair");
    }

    @Test
    void refusesARefillOnceTheDayIsClosed() {
        bench.setEntry(false);
        var refill = new CellEventRequest(cell, "refill", null, Bench.NOTICED);
        team.problem(team.put(refill, EVENT, UUID.randomUUID()), ProblemCode.LABDAY_CLOSED);
    }

    private void put(CellEventRequest request) {
        assertThat(team.put(request, EVENT, UUID.randomUUID())).hasStatusOk();
    }

    private CellAnswer shown() {
        return team.answer(team.get("/api/cells/{id}", cell), CellAnswer.class);
    }
}
