package org.berrywatt.server.cell;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.OutcomeAnswer;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.SheetRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.jspecify.annotations.Nullable;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** A team that builds, and what its phone sends of its cells. */
final class CellBench {

    final Bench bench;
    final Api team;

    CellBench(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
        team = bench.team("Sloe");
    }

    CellRequest request(String label) {
        return Bench.cellRequest(Bench.teamId(team), label);
    }

    CellRequest request(String label, List<BuildValue> recipe, @Nullable Typed area) {
        return new CellRequest(Bench.teamId(team), label, recipe, area, Bench.NOTICED);
    }

    OutcomeAnswer outcome(OutcomeRequest request) {
        return team.answer(team.put(request, "/api/outcomes/{id}", UUID.randomUUID()), OutcomeAnswer.class);
    }

    static SheetRequest correction(UUID replaces, String bakeTemperature) {
        var recipe = List.of(new BuildValue("bakeTemperature", bakeTemperature, "degC"));
        return new SheetRequest(replaces, recipe, null, Bench.NOTICED);
    }

    static OutcomeRequest failed(UUID cell, String stage, String failure) {
        return new OutcomeRequest(cell, stage, false, failure, null, null, Bench.NOTICED);
    }
}
