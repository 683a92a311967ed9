package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.junit.jupiter.api.Test;

class BlockedTestTest {

    @Test
    void countsDealsOfOneBlockExactly() throws IOException {
        // B. Efron and R. J. Tibshirani, An Introduction to the Bootstrap (1993), table 2.1: survival of 16 mice
        Published mice = Published.file("permutation_mouse.json");
        double[] all = joined(mice.data("treatment"), mice.data("control"));
        BlockedTest found = given(all, groups(7, 9), new int[16]);
        assertThat(found.p()).isCloseTo(mice.at("exact", "p_two_sided").asDouble(), within(1e-15));
        assertThat(found.evaluation()).isEqualTo(Evaluation.EXACT);
    }

    @Test
    void isTheRankSumTestOfRanksInOneBlock() throws IOException {
        // M. Hollander and D. A. Wolfe, Nonparametric Statistical Methods (1973), p. 69
        Published membranes = Published.file("mann_whitney_permeability.json");
        double[] values = joined(membranes.data("first"), membranes.data("second"));
        BlockedTest found = given(Scores.ranks(values), groups(10, 5), new int[15]);
        assertThat(found.p()).isCloseTo(membranes.computed("p_two_sided_exact"), within(1e-14));
    }

    @Test
    void isKruskalAndWallisOfRanksInOneLargeBlock() throws IOException {
        // J. M. Chambers and others, Graphical Methods for Data Analysis (1983): ozone by month
        Published air = Published.file("kruskal_wallis_airquality.json");
        int[] months = Arrays.stream(air.data("month")).mapToInt(m -> (int) m).toArray();
        BlockedTest found = given(Scores.ranks(air.data("ozone")), months, new int[months.length], Resampling.none());
        assertThat(found.statistic()).isCloseTo(air.computed("h_tie_corrected"), within(1e-10));
        assertThat(found.p()).isCloseTo(air.computed("p"), within(1e-15));
        assertThat(found.evaluation()).isEqualTo(Evaluation.APPROXIMATE);
    }

    @Test
    void isFriedmansTestOfRanksWithinCompleteBlocks() {
        // M. Friedman, Journal of the American Statistical Association 32 (1937): 12 / (b k (k + 1)) sum R² - 3 b (k +
        // 1);
        // rank sums 6, 8, 10 of four blocks of three: 12/48 (36 + 64 + 100) - 48 = 2
        double[] ranks = {1, 2, 3, 1, 2, 3, 1, 3, 2, 3, 1, 2};
        int[] groups = {0, 1, 2, 0, 1, 2, 0, 1, 2, 0, 1, 2};
        int[] blocks = {0, 0, 0, 1, 1, 1, 2, 2, 2, 3, 3, 3};
        BlockedTest found = given(ranks, groups, blocks);
        assertThat(found.statistic()).isCloseTo(2, within(1e-12));
        // exact distribution for k = 3, b = 4, same paper's table: P(chi² >= 2) = 0.431
        assertThat(found.p()).isCloseTo(0.431, within(5e-4));
    }

    @Test
    void doesNotMistakeTeamsForLevels() {
        // one good team made mostly elder, one poor team mostly sloe; within each sloe is a little better
        double[] scores = {10, 10.1, 10.2, 10.5, 1, 1.3, 1.4, 1.5};
        int[] levels = {0, 0, 0, 1, 0, 1, 1, 1};
        int[] teams = {0, 0, 0, 0, 1, 1, 1, 1};
        BlockedTest found = given(scores, levels, teams);
        // of the 4 x 4 deals none but the found one has the best sloe of the first team and the poorest elder of the
        // second
        assertThat(found.p()).isCloseTo(1 / 16.0, within(1e-15));
    }

    @Test
    void countsSignsOfPairs() {
        // eight pairs, always the second better: 2 of 2^8 sign patterns (sign test, 0.0078)
        double[] scores = IntStream.range(0, 16).mapToDouble(i -> i % 2).toArray();
        int[] levels = IntStream.range(0, 16).map(i -> i % 2).toArray();
        int[] teams = IntStream.range(0, 16).map(i -> i / 2).toArray();
        assertThat(given(scores, levels, teams).p()).isCloseTo(2 / 256.0, within(1e-15));
    }

    @Test
    void drawsWhereThereAreTooManyDeals() throws IOException {
        // E. W. Crampton, Journal of Nutrition 33 (1947): exact p with ties 0.06366; 9999 draws know it to 0.0024
        Published teeth = Published.file("mann_whitney_ties_toothgrowth.json");
        double[] ranks = Scores.ranks(joined(teeth.data("first"), teeth.data("second")));
        BlockedTest found = given(ranks, groups(30, 30), new int[60], Resampling.seeded(7));
        assertThat(found.evaluation()).isEqualTo(Evaluation.RESAMPLED);
        assertThat(found.p()).isCloseTo(teeth.computed("p_two_sided_exact_permutation_with_ties"), within(4 * 0.0024));
    }

    @Test
    void seesTrendWithinBlocks() {
        // 2 of 3! x 3! orders rise or fall in both blocks
        double[] x = {1, 2, 3, 1, 2, 3};
        Answer<BlockedTest> rising = BlockedTest.ofTrend(
                new double[] {1, 2, 3, 11, 12, 13}, x, new int[] {0, 0, 0, 1, 1, 1}, Resampling.none());
        assertThat(rising.value().orElseThrow().p()).isCloseTo(2 / 36.0, within(1e-15));
    }

    @Test
    void withholdsAnswerWhenBlocksCannotTell() {
        assertThat(reason(new double[] {1, 2, 3, 4}, new int[] {0, 0, 1, 1}, new int[] {0, 0, 1, 1}))
                .isEqualTo(Reason.ONE_GROUP);
        assertThat(reason(new double[] {1, 2}, new int[] {0, 1}, new int[] {0, 0}))
                .isEqualTo(Reason.TOO_FEW);
        assertThat(reason(new double[] {2, 2, 2}, new int[] {0, 1, 1}, new int[] {0, 0, 0}))
                .isEqualTo(Reason.ALL_EQUAL);
        assertThat(reason(new double[] {2, Double.NaN, 2}, new int[] {0, 1, 1}, new int[] {0, 0, 0}))
                .isEqualTo(Reason.NOT_FINITE);
        assertThat(reason(new double[0], new int[0], new int[0])).isEqualTo(Reason.ONE_GROUP);
    }

    private static double[] joined(double[] first, double[] second) {
        return IntStream.range(0, first.length + second.length)
                .mapToDouble(i -> i < first.length ? first[i] : second[i - first.length])
                .toArray();
    }

    private static int[] groups(int first, int second) {
        return IntStream.range(0, first + second).map(i -> i < first ? 0 : 1).toArray();
    }

    private static BlockedTest given(double[] scores, int[] groups, int[] blocks) {
        return given(scores, groups, blocks, Resampling.none());
    }

    private static BlockedTest given(double[] scores, int[] groups, int[] blocks, Resampling resampling) {
        return BlockedTest.ofGroups(scores, groups, blocks, resampling).value().orElseThrow();
    }

    private static Reason reason(double[] scores, int[] groups, int[] blocks) {
        return ((Withheld<BlockedTest>) BlockedTest.ofGroups(scores, groups, blocks, Resampling.none())).reason();
    }
}
