package org.berrywatt.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class QuantitiesTest {

    /** What a class of 8 teams and 24 cells takes in all. Common practice, no source. */
    @Test
    void preparesForTwoDozenCellsWhatAClassCountsOn() {
        var needs = Quantities.of(Collections.nCopies(24, Map.of()), Quantities.USUAL_WASTE);

        assertThat(amount(needs, "glass")).isEqualTo(60);
        assertThat(amount(needs, "oxide")).isBetween(6.0, 10.0);
        assertThat(amount(needs, "pasteLiquid")).isBetween(10.0, 15.0);
        assertThat(amount(needs, "dye")).isBetween(100.0, 200.0);
        assertThat(amount(needs, "electrolyte")).isBetween(9.0, 11.0);
        assertThat(amount(needs, "alcohol")).isBetween(150.0, 200.0);
        assertThat(amount(needs, "clips")).isBetween(48.0, 60.0);
    }

    @Test
    void splitsByWhatTheRecipesSay() {
        var recipes = Stream.concat(
                        Collections.nCopies(12, Map.of("dyeSource", "blackberry")).stream(),
                        Collections.nCopies(11, Map.of("dyeSource", "beetroot")).stream())
                .toList();

        var plants = Quantities.of(recipes, 0).stream()
                .filter(need -> need.key().equals("plants"))
                .toList();

        assertThat(plants)
                .containsExactly(
                        new Need("plants", "dyeSource", "blackberry", 12, 48, "g"),
                        new Need("plants", "dyeSource", "beetroot", 11, 44, "g"));
    }

    @Test
    void preparesNoDyeForCellsWithoutDye() {
        assertThat(Quantities.of(List.of(Map.of("dyeSource", "none")), 0))
                .extracting(Need::key)
                .doesNotContain("dye", "plants");
    }

    private static double amount(List<Need> needs, String key) {
        return needs.stream()
                .filter(need -> need.key().equals(key))
                .mapToDouble(Need::amount)
                .sum();
    }
}
