package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class FisherExactTest {

    /** R. A. Fisher, The Design of Experiments (1935): the lady tasting tea; Fisher (1962): convictions of twins. */
    @ParameterizedTest
    @ValueSource(strings = {"tea", "convictions", "zero_cell"})
    void agreesWithPublishedTables(String name) throws IOException {
        JsonNode one = Published.file("fisher_exact.json").at("computed", name);
        int[] first = row(one, 0);
        int[] second = row(one, 1);
        assertThat(p(new int[] {first[0], second[0]}, first[0] + first[1], second[0] + second[1]))
                .isCloseTo(one.path("p_two_sided").asDouble(), within(1e-13));
    }

    @Test
    void countsTablesOfThreeRows() {
        // 2, 0, 0 of 2, 2, 2: 15 ways to place two successes, 3 of them in one row and 12 in two; the found kind has
        // 3/15
        assertThat(p(new int[] {2, 0, 0}, 2, 2, 2)).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void givesThreeAgainstThreeItsTenth() {
        // 2 of the 20 ways to place three successes among six, by counting
        assertThat(p(new int[] {3, 0}, 3, 3)).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void fallsBackOnChiSquaredForVeryManyTables() {
        int[] totals = new int[30];
        int[] successes = new int[30];
        for (int row = 0; row < 30; row++) {
            totals[row] = 40;
            successes[row] = 15 + row % 3;
        }
        FisherExact found = FisherExact.of(successes, totals).value().orElseThrow();
        assertThat(found.evaluation()).isEqualTo(Evaluation.APPROXIMATE);
        assertThat(found.p()).isBetween(0.9, 1.0);
    }

    @Test
    void withholdsAnswerWhenAllOrNoneWork() {
        assertThat(reason(new int[] {3, 3}, 3, 3)).isEqualTo(Reason.ALL_EQUAL);
        assertThat(reason(new int[] {0, 0}, 3, 3)).isEqualTo(Reason.ALL_EQUAL);
        assertThat(reason(new int[] {1, 0}, 3, 0)).isEqualTo(Reason.ONE_GROUP);
    }

    @Test
    void refusesMoreSuccessesThanTrials() {
        assertThatThrownBy(() -> FisherExact.of(new int[] {4}, new int[] {3}))
                .hasMessage("successes must lie in [0, total], got 4 of 3");
    }

    private static int[] row(JsonNode one, int row) {
        JsonNode counts = one.path("table").path(row);
        return new int[] {counts.path(0).asInt(), counts.path(1).asInt()};
    }

    private static double p(int[] successes, int... totals) {
        return FisherExact.of(successes, totals).value().orElseThrow().p();
    }

    private static Reason reason(int[] successes, int... totals) {
        return ((Withheld<FisherExact>) FisherExact.of(successes, totals)).reason();
    }
}
