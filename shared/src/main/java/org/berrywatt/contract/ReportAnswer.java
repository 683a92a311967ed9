package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What a day's report needs beside its leaderboard, findings and stations. */
public record ReportAnswer(UUID labDayId, List<TeamReport> teams) {

    /**
     * A team's page.
     *
     * @param comment the teacher's, as it stands; null while there is none
     * @param cellsAsked how many cells the day asks of it
     * @param cells in the order registered
     */
    public record TeamReport(
            UUID teamId, @Nullable TeamCommentAnswer comment, int cellsAsked, List<CellReport> cells) {}

    /**
     * A cell on it.
     *
     * @param notes what a reader of its figures should know
     * @param sweep points of its last valid load sweep, or empty
     * @param asides readings that do not count, and why
     * @param records what was recorded of what was asked
     */
    public record CellReport(
            UUID cellId,
            String label,
            String standing,
            @Nullable Remark remark,
            @Nullable Figure openCircuitVoltageV,
            @Nullable Figure currentDensityAm2,
            @Nullable Figure fillFactor,
            @Nullable Figure powerDensityWm2,
            List<Remark> notes,
            List<CurvePoint> sweep,
            List<Aside> asides,
            List<Records> records) {}

    /**
     * A reading that was set aside.
     *
     * @param kind key of the kind of reading
     */
    public record Aside(String kind, Instant readAt, String reason, String teacher) {}

    /**
     * How much there is of one kind of record.
     *
     * @param key {@code "recipe"}, {@code "area"}, {@code "stages"}, {@code "dark"}, {@code "light"} or {@code "sweep"}
     * @param recorded in [0, asked]
     * @param asked of a cell that came so far, in [1, infinity)
     */
    public record Records(String key, int recorded, int asked) {}
}
