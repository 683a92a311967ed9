package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The control cell of a lab day and what its readings under light tell of the stations.
 *
 * @param cellId null while none is chosen; then the lists are empty
 * @param stations at which it was read, by name
 * @param checks between the stations at which it was read
 */
public record ControlCellAnswer(
        @Nullable UUID cellId, @Nullable String label, List<Course> stations, List<Check> checks) {

    /**
     * The control cell at one station.
     *
     * @param readings oldest first
     * @param driftPerHour change of its current as a part per hour; null for fewer than two readings
     */
    public record Course(
            UUID stationId,
            String station,
            List<ControlReading> readings,
            @Nullable Figure driftPerHour) {}

    /**
     * One reading of the control cell.
     *
     * @param photocurrentA current that comes from light
     * @param effectiveIrradianceWm2 the light by the station's instrument, as the cell's dye sees it
     */
    public record ControlReading(Instant at, Figure photocurrentA, Figure effectiveIrradianceWm2) {}

    /**
     * Whether the light meters and the control cell tell the same of two stations.
     *
     * @param lightRatio light at the other station over light at the one, by their instruments
     * @param currentRatio the same by the control cell's current
     * @param agrees within the expanded uncertainty (k = 2)
     */
    public record Check(String one, String other, Figure lightRatio, Figure currentRatio, boolean agrees) {}
}
