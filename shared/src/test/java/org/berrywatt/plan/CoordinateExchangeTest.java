package org.berrywatt.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CoordinateExchangeTest {

    private static final long SEED = 2026;

    @ParameterizedTest
    @ValueSource(strings = {"l4", "l8", "l9", "l18", "pb12"})
    void givesPublishedOrthogonalArraysFullEfficiency(String name) throws IOException {
        assertThat(new Precision(PublishedDesign.array(name)).efficiency()).isCloseTo(1, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(strings = {"l4", "l8", "l9", "l18", "pb12"})
    void findsADesignAsGoodAsThePublishedOrthogonalArray(String name) throws IOException {
        var published = PublishedDesign.array(name);

        var found = search(published.factors(), List.of(published.runs().size()));

        assertThat(new Precision(found).efficiency()).isCloseTo(1, within(1e-9));
    }

    /** Any of its columns are orthogonal, too. */
    @Test
    void findsADesignAsGoodAsPartOfThePublishedArrayWhateverTheOrderOfFactors() {
        var factors =
                List.of(PublishedDesign.factor("A", 3), PublishedDesign.factor("B", 2), PublishedDesign.factor("C", 3));

        assertThat(new Precision(search(factors, List.of(18))).efficiency()).isCloseTo(1, within(1e-9));
    }

    /** lambda v / (r k) = 7/9, Cochran and Cox 1957, plan 11.7. */
    @Test
    void givesThePublishedBlockDesignItsEfficiencyFactor() throws IOException {
        assertThat(new Precision(PublishedDesign.blocks("bib-7-7-3-3-1")).efficiency())
                .isCloseTo(7 / 9.0, within(1e-12));
    }

    @Test
    void findsADesignAsGoodAsThePublishedBlockDesign() {
        var found = search(List.of(PublishedDesign.factor("A", 7)), Collections.nCopies(7, 3));

        assertThat(new Precision(found).efficiency()).isCloseTo(7 / 9.0, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"8, 3, 2", "8, 3, 3", "6, 2, 2", "7, 3, 2"})
    void givesEachLevelToAsManyCellsAsItCan(int teams, int cells, int levels) {
        var found = search(List.of(PublishedDesign.factor("A", levels)), Collections.nCopies(teams, cells));

        var counts = found.runs().stream()
                .collect(Collectors.groupingBy(run -> run.levels().get(0), Collectors.counting()))
                .values();
        assertThat(Collections.max(counts) - Collections.min(counts)).isLessThanOrEqualTo(1);
        assertThat(counts).hasSize(levels);
    }

    @Test
    void answersTheSameForTheSameSeed() {
        var factors = List.of(PublishedDesign.factor("A", 2), PublishedDesign.factor("B", 3));

        assertThat(search(factors, Collections.nCopies(8, 3)))
                .isEqualTo(search(factors, Collections.nCopies(8, 3)))
                .isNotEqualTo(CoordinateExchange.search(
                        factors, Collections.nCopies(8, 3), PublishedDesign.recipes(factors), SEED + 1));
    }

    private static Design search(List<Factor> factors, List<Integer> blocks) {
        return CoordinateExchange.search(factors, blocks, PublishedDesign.recipes(factors), SEED);
    }
}
