package org.berrywatt.server.desk;

import java.time.Instant;
import java.util.Comparator;
import java.util.Map;
import java.util.UUID;
import org.berrywatt.contract.Remark;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.light.Station;
import org.jspecify.annotations.Nullable;

/**
 * Something that may wait for the teacher.
 *
 * @param subject tells it from others of its kind
 */
record Matter(
        Kind kind,
        UUID subject,
        @Nullable UUID teamId,
        @Nullable UUID cellId,
        @Nullable UUID stationId,
        Instant since,
        Map<String, Object> values,
        @Nullable Remark remark) {

    /** The most urgent first, of equal urgency the oldest, and then always in the same order. */
    static final Comparator<Matter> ORDER = Comparator.comparing(
                    (Matter matter) -> matter.kind().urgency())
            .thenComparing(Matter::since)
            .thenComparing(Matter::id);

    static Matter ofCell(Kind kind, Cell cell, Instant since, @Nullable Remark remark) {
        return new Matter(kind, cell.id(), cell.teamId(), cell.id(), null, since, Map.of("cell", cell.label()), remark);
    }

    static Matter ofStation(Kind kind, Station station, Instant since, Map<String, Object> values) {
        return new Matter(kind, station.id(), null, null, station.id(), since, values, null);
    }

    static Matter ofTeam(Kind kind, UUID teamId, Instant since, Map<String, Object> values) {
        return new Matter(kind, teamId, teamId, null, null, since, values, null);
    }

    String id() {
        return kind.key() + "." + subject;
    }
}
