package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One build parameter against the cells' performance.
 *
 * @param kind {@code "number"} or {@code "sort"}
 * @param unit unit key of a numeric parameter
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

    /** Spearman's rank correlation, two-sided p. */
    public record RankCorrelation(double rho, double p, int n) {}

    /** Kruskal-Wallis test over levels. */
    public record RankTest(double h, int degreesOfFreedom, double p, int n) {}
}
