package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One build parameter against the cells' performance.
 *
 * @param kind {@code "number"} or {@code "sort"}
 * @param unit unit key of a numeric parameter
 * @param strength {@code "clear"}, {@code "suggestive"}, {@code "cannotTell"} or {@code "nothingToCompare"}
 * @param sentence what the cells say; in it and in the notes, values whose name ends in {@code Level} are levels of this
 *     parameter, to be worded like the levels of the dots
 */
public record FindingAnswer(
        UUID labDayId,
        String parameter,
        String kind,
        @Nullable String unit,
        List<Dot> dots,
        List<Level> levels,
        @Nullable RankCorrelation spearman,
        @Nullable RankTest kruskalWallis,
        String strength,
        Remark sentence,
        List<Remark> notes) {

    /**
     * A cell.
     *
     * @param level key of the level, or the number as text
     * @param standing {@code "counts"}, {@code "waiting"} or {@code "failed"}
     */
    public record Dot(
            UUID cellId,
            String label,
            UUID teamId,
            String team,
            int mark,
            String level,
            @Nullable Double number,
            String standing,
            @Nullable Figure powerDensityWm2,
            @Nullable String failedStage) {}

    /** A level with its cells: how many were made, how many count, the median of those that count. */
    public record Level(
            String level,
            int made,
            int counted,
            int failed,
            @Nullable Double medianPowerDensityWm2) {}

    /**
     * Spearman's rank correlation, two-sided p.
     *
     * @param n cells, or teams when no team tried two levels
     * @param evaluation {@code "exact"} or {@code "approximate"}
     */
    public record RankCorrelation(double rho, double p, int n, String evaluation) {}

    /**
     * Kruskal-Wallis test over levels.
     *
     * @param n cells, or teams when no team tried two levels
     * @param evaluation {@code "exact"} or {@code "approximate"}
     */
    public record RankTest(double h, int degreesOfFreedom, double p, int n, String evaluation) {}
}
