package org.berrywatt.leaderboard;

import java.time.Duration;
import org.jspecify.annotations.Nullable;

/**
 * A cell with a result, and what of the day a metric may look at beside it.
 *
 * @param now the reading that counts
 * @param station where that was taken
 * @param mainStation the station at which most cells of the day were read
 * @param control the day's control cell; null while none is chosen
 * @param settled this cell when it had settled; null while it has not, or nobody can tell
 */
public record MeasuredCell(
        EvaluatedReading now,
        String station,
        String mainStation,
        @Nullable Control control,
        @Nullable Settled settled) {

    /** How far apart in time a cell and its control cell may be read: a lamp warms up (common practice, no source). */
    public static final int NEAR_MINUTES = 30;

    /**
     * The control cell.
     *
     * @param reading at the cell's station within {@value #NEAR_MINUTES} minutes of the cell's; null when there is none with a
     *     result
     */
    public record Control(@Nullable EvaluatedReading reading) {}

    /**
     * A cell when it had settled.
     *
     * @param reading at which that showed
     * @param age time from that reading to the one that counts
     */
    public record Settled(EvaluatedReading reading, Duration age) {}
}
