package org.berrywatt.server.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.FindingAnswer;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;

@ServerTest
class FindingsTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private MockMvc browser;

    @Autowired
    private Findings findings;

    private Rehearsal day;
    private UUID yard;

    @BeforeEach
    void buildCells() {
        day = new Rehearsal(server);
        yard = day.sunnyStation("Yard");
        day.light(yard, "1000 W/m2");
        UUID team = day.team("Larch");
        lit(day.cell(team, "L1", "15 x 15 mm", baked("450", "degC"), dyed("hibiscus")));
        lit(day.cell(team, "L2", "15 x 15 mm", baked("723.15", "K"), dyed("blackberry")));
        day.failure(day.cell(team, "L3", "15 x 15 mm", baked("250", "degC")), "dye", "washedOff");
    }

    @Test
    void showsEveryCellAtItsLevelFailuresIncluded() {
        FindingAnswer finding = findings.about("bakeTemperature", day.labDayId);

        assertThat(finding.kind()).isEqualTo("number");
        assertThat(finding.unit()).isEqualTo("degC");
        // 723.15 K are 450 degC by definition of the Celsius scale
        assertThat(finding.dots())
                .extracting(FindingAnswer.Dot::label, FindingAnswer.Dot::level, FindingAnswer.Dot::failedStage)
                .containsExactlyInAnyOrder(
                        tuple("L1", "450", null), tuple("L2", "450", null), tuple("L3", "250", "dye"));
    }

    @Test
    void countsYieldBesideTheMedian() {
        assertThat(findings.about("bakeTemperature", day.labDayId).levels())
                .extracting(FindingAnswer.Level::level, FindingAnswer.Level::made, FindingAnswer.Level::counted)
                .containsExactly(tuple("250", 1, 0), tuple("450", 2, 2));
    }

    @Test
    void leavesOutCellsWhoseLevelNobodyRecorded() {
        FindingAnswer finding = findings.about("dyeSource", day.labDayId);

        assertThat(finding.kind()).isEqualTo("sort");
        assertThat(finding.dots())
                .extracting(FindingAnswer.Dot::level)
                .containsExactlyInAnyOrder("hibiscus", "blackberry");
    }

    @Test
    void refusesAParameterThatTheCatalogueDoesNotKnow() {
        assertThatThrownBy(() -> findings.about("moonPhase", day.labDayId))
                .hasMessageContaining("choice.unknown")
                .hasMessageContaining("moonPhase")
                .hasMessageContaining("bakeTemperature");
    }

    @Test
    void showsFindingsToNobodyFromOutside() throws Exception {
        browser.perform(get("/api/labdays/{id}/findings", day.labDayId).queryParam("parameter", "bakeTime"))
                .andExpect(status().isUnauthorized());
    }

    private void lit(UUID cell) {
        day.dark(cell, "0 mV", "0 uA");
        day.lit(cell, yard, "400 mV", "0.900 mA");
    }

    private static BuildValue baked(String temperature, String unit) {
        return new BuildValue("bakeTemperature", temperature, unit);
    }

    private static BuildValue dyed(String source) {
        return new BuildValue("dyeSource", source, null);
    }
}
