package org.berrywatt.contract;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What cells say about one build parameter.
 *
 * @param parameter its key
 * @param kind {@code "number"} or {@code "sort"}
 * @param levels numbers rising, sorts by key; none for numbers of which nearly every cell has its own
 * @param tests those that the cells could answer
 * @param effect how large the difference is; null where it cannot be estimated
 * @param yieldCurve for numbers, the chance to come through
 * @param strength {@code "clear"}, {@code "suggestive"}, {@code "cannotTell"}, {@code "confounded"} or {@code
 *     "nothingToCompare"}
 * @param yieldStrength the same for how many cells come through
 * @param p behind the strength, in (0, 1]
 * @param holm the same corrected for all parameters looked at
 * @param entries cells that entered the comparison, or teams when hardly a team tried several levels
 * @param confoundedWith the parameter that hides this one
 * @param sentence what the cells say; in it and in the notes values whose name ends in {@code Parameter} are keys of parameters,
 *     and those in {@code Level} are levels: of the parameter whose name begins alike, otherwise of this one
 */
public record ParameterAnswer(
        String parameter,
        String kind,
        List<Level> levels,
        Tests tests,
        @Nullable Effect effect,
        @Nullable YieldCurve yieldCurve,
        String strength,
        String yieldStrength,
        double p,
        double holm,
        int entries,
        boolean teamsOnly,
        @Nullable String confoundedWith,
        Remark sentence,
        List<Remark> notes) {

    /**
     * A level with its cells.
     *
     * @param made cells started
     * @param n cells that count
     * @param failed cells that broke
     * @param median of the cells that count
     * @param interval 95 % interval of the median; null for few cells
     * @param came share that came through of those that count or broke, in [0, 1]
     * @param cameInterval Wilson's 95 % interval of that share
     */
    public record Level(
            String level,
            @Nullable Double number,
            int made,
            int n,
            int failed,
            @Nullable Double median,
            @Nullable Span interval,
            @Nullable Double came,
            @Nullable Span cameInterval) {}

    /** A closed interval. */
    public record Span(double low, double high) {}

    /**
     * Tests by name; null where the cells give no answer.
     *
     * @param difference levels within blocks
     * @param trend numbers within blocks
     * @param composite levels within blocks, broken cells the poorest
     * @param yield shares that came through, within blocks
     */
    public record Tests(
            @Nullable Blocked difference,
            @Nullable Blocked trend,
            @Nullable Blocked composite,
            @Nullable Blocked yield,
            @Nullable RankTest kruskalWallis,
            @Nullable RankSum mannWhitney,
            @Nullable Variance anova,
            @Nullable RankCorrelation spearman,
            @Nullable Slope theilSen,
            @Nullable Exact fisher) {}

    /**
     * A test within blocks.
     *
     * @param evaluation {@code "exact"}, {@code "resampled"} or {@code "approximate"}
     */
    public record Blocked(double q, int df, double p, int n, int blocks, String evaluation) {}

    /** Kruskal-Wallis test over all cells. */
    public record RankTest(double h, int df, double p, int n, String evaluation) {}

    /** Mann-Whitney test of two levels; ratio: first over second by Hodges and Lehmann, with its 95 % interval. */
    public record RankSum(double u, double p, double ratio, Span interval, String evaluation) {}

    /** One-way analysis of variance of logarithms. */
    public record Variance(double f, int dfBetween, int dfWithin, double p) {}

    /** Spearman's rank correlation over all cells, two-sided p. */
    public record RankCorrelation(double rho, double p, int n, String evaluation) {}

    /** Theil and Sen's slope of the natural logarithm per unit, with its 95 % interval. */
    public record Slope(double slope, Span interval, int n) {}

    /** Fisher's exact test of the shares that came through. */
    public record Exact(double p, int n, String evaluation) {}

    /**
     * How many times the performance at one level is that at another, block differences taken out.
     *
     * @param smallest least ratio that this design shows in four of five classes
     */
    public record Effect(String fromLevel, String toLevel, double ratio, Span interval, double smallest) {}

    /** Log odds to come through: intercept + slope times the number. */
    public record YieldCurve(double intercept, double slope, Span slopeInterval, double p) {}
}
