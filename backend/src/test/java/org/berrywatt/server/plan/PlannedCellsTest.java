package org.berrywatt.server.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.PlannedCellAnswer;
import org.berrywatt.contract.PlannedCellRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class PlannedCellsTest {

    private final Planner planner;

    @Autowired
    PlannedCellsTest(MockMvcTester server, JsonMapper json) {
        planner = new Planner(new Bench(server, json));
    }

    @Test
    void tellsTeamsTheirOwnCellsAndRecordsWhatTheyBuiltOtherwise() {
        planner.save(0, Planner.DYE, Planner.BAKE);
        var sloe = planner.bench().team("Sloe");
        var own = planner.cells(sloe);
        var planned = own.get(0);
        var otherDye = planned.levels().get(0) == 0 ? "beetroot" : "blackberry";
        var id = UUID.randomUUID();
        var recipe = List.of(new BuildValue("dyeSource", otherDye, null), new BuildValue("bakeTime", "30", "min"));
        assertThat(sloe.put(
                        new CellRequest(Bench.teamId(sloe), "mine", recipe, null, Bench.NOTICED),
                        "/api/cells/{id}",
                        id))
                .hasStatusOk();

        assertThat(sloe.put(new PlannedCellRequest(id, planned.label()), "/api/planned-cells/{id}", UUID.randomUUID()))
                .hasStatusOk();

        assertThat(own)
                .hasSize(3)
                .allSatisfy(cell -> assertThat(cell.teamName()).isEqualTo("Sloe"));
        var made = planner.cells(planner.teacher()).get(0);
        assertThat(made.cellId()).isEqualTo(id);
        assertThat(made.deviations())
                .extracting(deviation -> deviation.made().text())
                .containsExactly(otherDye);
    }

    @Test
    void believesTheLatestWordAboutACell() {
        planner.save(0, Planner.DYE);
        var sloe = planner.bench().team("Sloe");
        var cell = planner.bench().cell(sloe, "C1");
        for (var label : List.of("A1", "A2")) {
            sloe.put(new PlannedCellRequest(cell, label), "/api/planned-cells/{id}", UUID.randomUUID());
        }

        assertThat(planner.cells(sloe).stream().filter(each -> each.cellId() != null))
                .extracting(PlannedCellAnswer::label)
                .containsExactly("A2");
        sloe.problem(
                sloe.put(new PlannedCellRequest(cell, "X9"), "/api/planned-cells/{id}", UUID.randomUUID()),
                ProblemCode.PLAN_MISSING);
    }
}
