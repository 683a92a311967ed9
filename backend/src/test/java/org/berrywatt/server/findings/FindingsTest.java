package org.berrywatt.server.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.FindingsAnswer;
import org.berrywatt.contract.ParameterAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.platform.Refusal;
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
        FindingsAnswer found = findings.of(day.labDayId, Filter.none());

        assertThat(found.units()).containsExactly(new FindingsAnswer.UnitOf("bakeTemperature", "degC"));
        // 723.15 K are 450 degC by definition of the Celsius scale
        assertThat(found.cells())
                .extracting(
                        FindingsAnswer.Dot::label,
                        dot -> level(dot, "bakeTemperature"),
                        FindingsAnswer.Dot::failedStage)
                .containsExactlyInAnyOrder(
                        tuple("L1", "450", null), tuple("L2", "450", null), tuple("L3", "250", "dye"));
    }

    @Test
    void countsYieldBesideTheMedian() {
        assertThat(about("bakeTemperature").levels())
                .extracting(ParameterAnswer.Level::level, ParameterAnswer.Level::made, ParameterAnswer.Level::n)
                .containsExactly(tuple("250", 1, 0), tuple("450", 2, 2));
        // Wilson's interval of 2 of 2 begins at 4 / (4 + 1.96 squared) * 1/2 = 0.342, by hand
        var came =
                Objects.requireNonNull(about("bakeTemperature").levels().get(1).cameInterval());
        assertThat(came.low()).isCloseTo(0.342, within(5e-4));
    }

    @Test
    void looksAtEveryParameterThatSomebodyRecorded() {
        assertThat(findings.of(day.labDayId, Filter.none()).study().parameters())
                .extracting(ParameterAnswer::parameter, ParameterAnswer::strength)
                .contains(tuple("dyeSource", "nothingToCompare"), tuple("bakeTemperature", "nothingToCompare"));
    }

    @Test
    void hearsOfANewReadingAtOnce() {
        lit(day.cell(day.team("Rowan"), "R1", "15 x 15 mm", baked("300", "degC")));

        assertThat(about("bakeTemperature").levels())
                .extracting(ParameterAnswer.Level::level, ParameterAnswer.Level::n)
                .containsExactly(tuple("250", 0), tuple("300", 1), tuple("450", 2));
    }

    @Test
    void saysTheSameAgainForTheSameCells() {
        assertThat(findings.of(day.labDayId, Filter.none())).isSameAs(findings.of(day.labDayId, Filter.none()));
    }

    @Test
    void looksAtTheCellsThatPassAFilterAndTellsWhatItLeavesOut() {
        var found = findings.of(day.labDayId, Filter.of(List.of("level.dyeSource\thibiscus", "level.dyeSource\t")));

        assertThat(found.all()).isEqualTo(3);
        assertThat(found.leftOut()).containsExactly("L2");
        assertThat(found.cells()).extracting(FindingsAnswer.Dot::label).containsExactlyInAnyOrder("L1", "L3");
    }

    @Test
    void filtersByWhereACellStandsAndHowFarItCame() {
        var counting = findings.of(day.labDayId, Filter.of(List.of("standing\tcounts", "station\t" + yard)));
        assertThat(counting.leftOut()).containsExactly("L3");

        var elsewhere = findings.of(day.labDayId, Filter.of(List.of("station\t" + UUID.randomUUID())));
        assertThat(elsewhere.cells()).isEmpty();
        assertThat(elsewhere.leftOut()).containsExactlyInAnyOrder("L1", "L2", "L3");
    }

    @Test
    void offersWhatTellsCellsApartToFilterBy() {
        assertThat(findings.of(day.labDayId, Filter.none()).choices())
                .filteredOn(choice -> choice.key().equals("level.bakeTemperature"))
                .singleElement()
                .extracting(FindingsAnswer.Choice::values)
                .isEqualTo(
                        List.of(new FindingsAnswer.Value("250", "250", 1), new FindingsAnswer.Value("450", "450", 2)));
        assertThat(findings.of(day.labDayId, Filter.none()).choices())
                .extracting(FindingsAnswer.Choice::key)
                .doesNotContain("day", "team");
    }

    @Test
    void refusesAFilterThatSaysNothing() {
        assertThatThrownBy(() -> Filter.of(List.of("\tcounts")))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.CHOICE_UNKNOWN));
    }

    @Test
    void keepsABlankAtTheEndOfAnAddressOrNot() {
        assertThat(Filter.of(List.of("level.dyeSource"))).isEqualTo(Filter.of(List.of("level.dyeSource\t")));
    }

    @Test
    void showsFindingsToNobodyFromOutside() throws Exception {
        browser.perform(get("/api/labdays/{id}/findings", day.labDayId)).andExpect(status().isUnauthorized());
    }

    private ParameterAnswer about(String parameter) {
        return findings.of(day.labDayId, Filter.none()).study().parameters().stream()
                .filter(one -> one.parameter().equals(parameter))
                .findFirst()
                .orElseThrow();
    }

    private static String level(FindingsAnswer.Dot dot, String parameter) {
        return dot.levels().stream()
                .filter(at -> at.parameter().equals(parameter))
                .map(FindingsAnswer.At::level)
                .findFirst()
                .orElse("");
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
