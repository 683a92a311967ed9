package org.berrywatt.cell;

import static org.assertj.core.api.Assertions.assertThat;

import org.berrywatt.cell.BuildParameter.Kind;
import org.berrywatt.light.DyeFamily;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BuildCatalogueTest {

    @Test
    void beginsWithTheFourThatEveryClassRecords() {
        assertThat(BuildCatalogue.all())
                .extracting(BuildParameter::key)
                .startsWith("oxideSource", "dyeSource", "bakeTemperature", "bakeTime")
                .doesNotHaveDuplicates()
                .hasSizeBetween(16, 24);
    }

    @Test
    void givesEveryNumberAFieldAndEverySortItsLevels() {
        for (BuildParameter parameter : BuildCatalogue.all()) {
            boolean number = parameter.kind() == Kind.NUMBER;
            assertThat(parameter.field() != null).as(parameter.key()).isEqualTo(number);
            assertThat(parameter.levelKeys().isEmpty()).as(parameter.key()).isEqualTo(number);
            assertThat(parameter.levelKeys()).as(parameter.key()).doesNotHaveDuplicates();
        }
    }

    @Test
    void coversEveryStage() {
        assertThat(BuildCatalogue.all()).extracting(BuildParameter::stage).contains(Stage.values());
    }

    @Test
    void findsAParameterByItsKey() {
        assertThat(BuildCatalogue.of("bakeTime")).isPresent();
        assertThat(BuildCatalogue.of("moonPhase")).isEmpty();
    }

    /**
     * Main pigments: anthocyanins in blackberry (Cherepy et al. 1997), hibiscus (Wongcharee et al. 2007) and red cabbage,
     * betalains in prickly pear (Calogero et al. 2012) and beetroot, chlorophyll in spinach (common botanical knowledge).
     */
    @ParameterizedTest
    @CsvSource({
        "blackberry, ANTHOCYANIN",
        "hibiscus, ANTHOCYANIN",
        "redCabbage, ANTHOCYANIN",
        "pricklyPear, BETALAIN",
        "beetroot, BETALAIN",
        "spinach, CHLOROPHYLL",
        "turmeric, OTHER",
        "otherPlant, OTHER",
        "none, UNDYED"
    })
    void knowsThePigmentOfADyeSource(String levelKey, DyeFamily family) {
        assertThat(BuildCatalogue.dyeFamilyOf(levelKey)).isEqualTo(family);
    }

    @Test
    void takesAnUnknownDyeForAnyOther() {
        assertThat(BuildCatalogue.dyeFamilyOf("stardust")).isEqualTo(DyeFamily.OTHER);
    }
}
