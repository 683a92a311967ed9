package org.berrywatt.contract.calculation;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Cells whose teams are put in order. The order of the list says nothing.
 *
 * @param trials in [1000, 10000]; 10000 when left out
 * @param seed of the trials; 1 when left out
 * @param cells 1 to 240
 */
public record LeaderboardRequest(
        @Nullable Scoring rule,
        @Nullable Integer trials,
        @Nullable Long seed,
        @Nullable List<@Nullable Cell> cells) {

    /**
     * What is compared and how a team's cells count.
     *
     * @param metric key of what is compared, for example {@code "powerDensity"}, the default; {@code "efficiencyAsMeasured"}
     *     takes cells of the busiest station alone, under {@code "yield"} each working cell is 1
     * @param count {@code "medianOfDeclared"}, {@code "meanOfDeclared"} or {@code "bestVerified"}
     * @param control under {@code "ratioToControl"} the cell of the list that all values are divided by, trial by trial; when
     *     left out, the values are ratios already
     * @param cellsPerTeam declared cells of each team, in [1, 12]; as many as it has when left out
     * @param entryOpen whether declared cells without a result still wait; otherwise they count as 0. False when left out
     */
    public record Scoring(
            @Nullable String metric,
            @Nullable String count,
            @Nullable CellName control,
            @Nullable Integer cellsPerTeam,
            @Nullable Boolean entryOpen) {}

    /** One of the cells of the list. */
    public record CellName(@Nullable String team, @Nullable String cell) {}

    /**
     * A declared cell.
     *
     * @param team name, 1 to 60 characters
     * @param cell name, its own within the team, 1 to 60 characters
     * @param state {@code "counts"}, {@code "failed"} or {@code "waiting"}; counts when left out
     * @param value its result, in [0, 1e9]; needed when it counts
     * @param standardUncertainty of the cell's own, in [0, 1e9]
     * @param low lower end of a 95 % interval, in [-1e9, 1e9], in place of the standard uncertainty
     * @param high upper end, in [-1e9, 1e9]
     * @param shared what it shares with other cells, such as a light meter, up to 8 causes
     * @param station where it was measured; needed for {@code "efficiencyAsMeasured"}
     * @param readAgain what others found for the same cell, up to 12
     */
    public record Cell(
            @Nullable String team,
            @Nullable String cell,
            @Nullable String state,
            @Nullable Double value,
            @Nullable Double standardUncertainty,
            @Nullable Double low,
            @Nullable Double high,
            @Nullable List<@Nullable Shared> shared,
            @Nullable String station,
            @Nullable List<@Nullable Double> readAgain) {}

    /**
     * A cause that moves several cells alike.
     *
     * @param cause name, 1 to 60 characters
     * @param standardUncertainty what it does to this cell's result, in [0, 1e9]
     */
    public record Shared(@Nullable String cause, @Nullable Double standardUncertainty) {}
}
