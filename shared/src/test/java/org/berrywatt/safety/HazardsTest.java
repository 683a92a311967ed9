package org.berrywatt.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which hazards belong to which work: common practice of school recipes, no source. */
class HazardsTest {

    @ParameterizedTest(name = "{0} with {1} {2} is gated by {3}")
    @CsvSource({
        "BAKE, heater, ceramicPlate, HEAT",
        "BAKE, heater, hotAir, HEAT",
        "COUNTER_ELECTRODE, counterElectrode, candleSoot, FLAME",
        "COUNTER_ELECTRODE, counterElectrode, platinum, HEAT",
        "FILM, pasteAcid, nitric, CORROSIVES",
        "FILM, pasteAcid, acetic, CORROSIVES",
        "FILL, seal, hotMelt, HEAT"
    })
    void gatesWhatIsHotBurnsOrCorrodes(Stage stage, String parameter, String level, Zone zone) {
        assertThat(Hazards.gatesOf(stage, Map.of(parameter, level))).containsExactly(zone);
    }

    @ParameterizedTest(name = "{0} with {1} {2} is not gated")
    @CsvSource({
        "BAKE, heater, none",
        "COUNTER_ELECTRODE, counterElectrode, pencil",
        "COUNTER_ELECTRODE, counterElectrode, graphiteSpray",
        "FILM, pasteAcid, vinegar",
        "FILM, pasteAcid, readyPaste",
        "DYE, rinse, alcohol",
        "FILL, electrolyte, iodideInGlycol",
        "MEASURE, lightSide, oxideSide"
    })
    void leavesColdAndMildWorkOpen(Stage stage, String parameter, String level) {
        assertThat(Hazards.gatesOf(stage, Map.of(parameter, level))).isEmpty();
    }

    @Test
    void bringsHeatAndFlameWithABurner() {
        assertThat(Hazards.gatesOf(Stage.BAKE, Map.of("heater", "burnerOnGauze")))
                .containsExactlyInAnyOrder(Zone.HEAT, Zone.FLAME);
    }

    @Test
    void takesWhatNobodyRecordedForTheUsualWay() {
        assertThat(Hazards.gatesOf(Stage.BAKE, Map.of())).containsExactly(Zone.HEAT);
        assertThat(Hazards.gatesOf(Stage.COUNTER_ELECTRODE, Map.of())).containsExactly(Zone.FLAME);
        assertThat(Hazards.gatesOf(Stage.FILM, Map.of())).isEmpty();
        assertThat(Hazards.of(Stage.FILM, Map.of()))
                .containsExactly(Hazard.GLASS_EDGES, Hazard.TITANIA_POWDER, Hazard.ALCOHOL);
    }

    @Test
    void addsWhatARecipeBrings() {
        assertThat(Hazards.of(Stage.FILL, Map.of("electrolyte", "iodideInAlcohol")))
                .containsExactly(Hazard.IODIDE_SOLUTION, Hazard.ALCOHOL);
        assertThat(Hazards.of(Stage.FILM, Map.of("oxideSource", "readyPaste", "cleaning", "none")))
                .containsExactly(Hazard.GLASS_EDGES);
        assertThat(Hazards.of(Stage.DYE, Map.of("dyeSource", "none", "rinse", "water")))
                .isEmpty();
    }

    @Test
    void namesAHazardOnceHoweverManyReasonsItHas() {
        assertThat(Hazards.of(Stage.DYE, Map.of("dyeSolvent", "alcohol", "rinse", "alcohol")))
                .containsExactly(Hazard.PLANTS, Hazard.ALCOHOL);
    }

    @Test
    void readsOnlyLevelsThatTheCatalogueOfTheBuildHas() {
        for (Trigger trigger : Hazards.triggers()) {
            if (trigger.parameter() != null) {
                var parameter = BuildCatalogue.of(trigger.parameter()).orElseThrow();
                assertThat(parameter.levelKeys()).as(trigger.toString()).containsAll(trigger.levels());
                assertThat(parameter.stage()).as(trigger.toString()).isEqualTo(trigger.stage());
            }
        }
    }
}
