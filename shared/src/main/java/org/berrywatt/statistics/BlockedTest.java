package org.berrywatt.statistics;

import java.util.Arrays;
import java.util.function.IntFunction;
import org.berrywatt.statistics.Answer.Given;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;

/**
 * Do scores go with groups, or with a number, within blocks? Scores are only ever compared within their block.
 *
 * <p>Q = T' V⁻ T, where T sums the scores' deviations from their block's mean over each group (or times the number), and V is
 * the covariance of T when scores are dealt anew within every block. With ranks as scores Q is Kruskal and Wallis's H for one
 * block and Friedman's for complete blocks. p is the share of all deals with a Q at least as large while there are at most
 * {@value #FEW}; beyond, of the deals drawn, the found one counted in; without draws Q is taken as chi-squared. Sources: J. R.
 * Landis, E. R. Heyman and G. G. Koch, International Statistical Review 46 (1978) 237-254; B. Phipson and G. K. Smyth,
 * Statistical Applications in Genetics and Molecular Biology 9 (2010) 39.
 *
 * @param statistic Q, in [0, ∞)
 * @param degreesOfFreedom rank of V
 * @param p in (0, 1]
 * @param n scores in blocks that hold more than one group
 * @param blocks blocks that hold more than one group
 */
public record BlockedTest(double statistic, int degreesOfFreedom, double p, int n, int blocks, Evaluation evaluation) {

    /** Up to this many deals are looked at one by one. */
    static final int FEW = 200_000;

    /** Beyond this many scores the large-sample distribution is taken. */
    private static final int MOST_DRAWN = 2_000;

    /** Components times groups; beyond, fewer deals can be looked at in the same time. */
    private static final int MOST_GROUPS = 100;

    /** Statistics of deals alike may differ in their last digits with the order of sums. */
    private static final double SAME = 1 - 1e-9;

    /**
     * Do the groups differ?
     *
     * @param groups group of every score, in [0, ∞)
     * @param blocks block of every score, in [0, ∞)
     * @return no answer for scores that are not finite, no block with two groups, fewer than three scores in such blocks, or
     *     scores equal within each of them
     * @throws IllegalArgumentException when the arrays differ in length
     */
    public static Answer<BlockedTest> ofGroups(double[] scores, int[] groups, int[] blocks, Resampling resampling) {
        int most = Arrays.stream(groups).max().orElse(-1) + 1;
        return test(scores, groups, blocks, resampling, group -> unit(group, most));
    }

    /**
     * Do the scores rise or fall with a number? Same conditions as for groups; equal numbers make a group.
     *
     * @param x finite
     */
    public static Answer<BlockedTest> ofTrend(double[] scores, double[] x, int[] blocks, Resampling resampling) {
        double[] distinct = Arrays.stream(x).distinct().sorted().toArray();
        if (!Ranks.allFinite(x)) {
            return new Withheld<>(Reason.NOT_FINITE);
        }
        int[] groups = Arrays.stream(x)
                .mapToInt(value -> Arrays.binarySearch(distinct, value))
                .toArray();
        double middle = distinct.length == 0 ? 0 : distinct[distinct.length / 2];
        return test(scores, groups, blocks, resampling, group -> new double[] {distinct[group] - middle});
    }

    private static double[] unit(int group, int groups) {
        double[] unit = new double[groups];
        unit[group] = 1;
        return unit;
    }

    private static Answer<BlockedTest> test(
            double[] scores, int[] groups, int[] blocks, Resampling resampling, IntFunction<double[]> weights) {
        if (scores.length != groups.length || scores.length != blocks.length) {
            throw new IllegalArgumentException("every score needs a group and a block, got " + scores.length + ", "
                    + groups.length + " and " + blocks.length);
        }
        if (!Ranks.allFinite(scores)) {
            return new Withheld<>(Reason.NOT_FINITE);
        }
        Blocks telling = Blocks.telling(scores, groups, blocks);
        if (telling.count() == 0) {
            return new Withheld<>(Reason.ONE_GROUP);
        }
        if (telling.size() < 3) {
            return new Withheld<>(Reason.TOO_FEW);
        }
        DealtSums sums = DealtSums.of(telling, weights);
        return sums.rank() == 0 ? new Withheld<>(Reason.ALL_EQUAL) : new Given<>(compare(telling, sums, resampling));
    }

    private static BlockedTest compare(Blocks blocks, DealtSums sums, Resampling resampling) {
        double found = sums.found();
        double room = Math.min(1, MOST_GROUPS / (double) (sums.rank() * blocks.groupCount()));
        if (blocks.logDeals() <= Math.log(FEW * room)) {
            double p = new BlockDeals(blocks, sums).shareAtLeast(found * SAME);
            return of(blocks, sums, found, p, Evaluation.EXACT);
        }
        if (resampling.draws() == 0 || blocks.size() > MOST_DRAWN || room < 0.01) {
            double p = ChiSquared.beyond(sums.rank(), found);
            return of(blocks, sums, found, p, Evaluation.APPROXIMATE);
        }
        double reached = new DrawnDeals(blocks, sums, resampling).countAtLeast(found * SAME);
        return of(blocks, sums, found, (reached + 1) / (resampling.draws() + 1), Evaluation.RESAMPLED);
    }

    private static BlockedTest of(Blocks blocks, DealtSums sums, double found, double p, Evaluation evaluation) {
        return new BlockedTest(found, sums.rank(), p, blocks.size(), blocks.count(), evaluation);
    }

    /** The natural logarithm of how many deals there are within blocks: with e^x of them no p is below e^-x. */
    public static double logDeals(int[] groups, int[] blocks) {
        return Blocks.telling(new double[groups.length], groups, blocks).logDeals();
    }
}
