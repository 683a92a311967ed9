package org.berrywatt.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AllocationTest {

    private static final Factor DYE = new Factor("dyeSource", List.of("blackberry", "beetroot"));
    private static final Factor BAKE = new Factor("bakeTemperature", List.of("350", "450", "500"));

    @Test
    void givesEveryTeamItsCellsAndEveryLevelItsShare() {
        var design = Allocation.of(order(8, 3, DYE, BAKE));

        var perTeam = design.runs().stream().collect(Collectors.groupingBy(Run::block, Collectors.counting()));
        var figures = PlanFigures.of(design, new Wish(2, Wish.USUAL_SPREAD));
        assertThat(perTeam)
                .hasSize(8)
                .allSatisfy((team, cells) -> assertThat(cells).isEqualTo(3));
        assertThat(figures.factors().get(0).counts()).containsExactly(12, 12);
        assertThat(figures.factors().get(1).counts()).containsExactly(8, 8, 8);
        assertThat(figures.factors().get(0).teamsComparing()).isEqualTo(8);
    }

    /**
     * Two levels in teams of three are told with 1 - 1/9 of the precision of whole pairs, since one level is there twice
     * and the other once: the sum of squares about the team's mean is 3 - 1/3 of 3.
     */
    @Test
    void losesANinthWhereTeamsOfThreeCompareTwo() {
        var figures = PlanFigures.of(Allocation.of(order(8, 3, DYE)), new Wish(2, Wish.USUAL_SPREAD));

        assertThat(figures.efficiency()).isCloseTo(8 / 9.0, within(1e-9));
    }

    @Test
    void buildsNoForbiddenRecipe() {
        var forbidden = List.of(Map.of("dyeSource", "beetroot", "bakeTemperature", "500"));

        var design = Allocation.of(new Order(List.of(DYE, BAKE), 8, 3, forbidden, 7));

        assertThat(design.runs())
                .extracting(Run::levels)
                .doesNotContain(List.of(1, 2))
                .contains(List.of(0, 2));
    }

    @Test
    void takesForTheStandardCellTheFirstRecipeThatMayBeBuilt() {
        var forbidden = List.of(Map.of("dyeSource", "blackberry", "bakeTemperature", "350"));

        assertThat(Allocation.standard(order(8, 3, DYE, BAKE))).containsExactly(0, 0);
        assertThat(Allocation.standard(new Order(List.of(DYE, BAKE), 8, 3, forbidden, 7)))
                .containsExactly(0, 1);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void drawsAnotherOrderForAnotherSeedAndAsGoodAPlan(long seed) {
        var design = Allocation.of(new Order(List.of(DYE, BAKE), 8, 3, List.of(), seed));
        var other = Allocation.of(new Order(List.of(DYE, BAKE), 8, 3, List.of(), seed + 100));

        assertThat(design)
                .isNotEqualTo(other)
                .isEqualTo(Allocation.of(new Order(List.of(DYE, BAKE), 8, 3, List.of(), seed)));
        assertThat(new Precision(design).efficiency()).isCloseTo(new Precision(other).efficiency(), within(0.01));
    }

    @Test
    void refusesWhatComparesNothing() {
        refuses(PlanFault.NO_FACTOR, order(8, 3));
        refuses(PlanFault.ONE_LEVEL, order(8, 3, new Factor("dyeSource", List.of("blackberry"))));
        refuses(PlanFault.TOO_MANY_LEVELS, order(8, 3, PublishedDesign.factor("A", 200)));
        refuses(
                PlanFault.TOO_MANY_FACTORS,
                order(
                        8,
                        3,
                        IntStream.range(0, 7)
                                .mapToObj(i -> PublishedDesign.factor("F" + i, 2))
                                .toArray(Factor[]::new)));
    }

    @Test
    void refusesMoreDifferencesThanCellsAndSaysHowManyItNeeds() {
        var refused = refuses(PlanFault.TOO_FEW_CELLS, order(4, 1, DYE));

        assertThat(refused.value()).isEqualTo(4);
        assertThat(refused.limit()).isEqualTo(5);
    }

    @Test
    void refusesWhatForbidsEverythingOrALevel() {
        refuses(
                PlanFault.EVERYTHING_FORBIDDEN,
                new Order(
                        List.of(DYE),
                        8,
                        3,
                        List.of(Map.of("dyeSource", "beetroot"), Map.of("dyeSource", "blackberry")),
                        1));
        var refused = refuses(
                PlanFault.LEVEL_NEVER_ALLOWED,
                new Order(List.of(DYE, BAKE), 8, 3, List.of(Map.of("bakeTemperature", "500")), 1));
        assertThat(refused.subject()).isEqualTo("bakeTemperature:500");
    }

    private static PlanRefused refuses(PlanFault fault, Order order) {
        var caught = new PlanRefused[1];
        assertThatExceptionOfType(PlanRefused.class)
                .isThrownBy(() -> Allocation.of(order))
                .satisfies(refused -> {
                    assertThat(refused.fault()).isEqualTo(fault);
                    caught[0] = refused;
                });
        return caught[0];
    }

    private static Order order(int teams, int cells, Factor... factors) {
        return new Order(List.of(factors), teams, cells, List.of(), 2026);
    }
}
