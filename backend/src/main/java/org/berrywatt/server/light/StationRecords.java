package org.berrywatt.server.light;

import static java.util.stream.Collectors.groupingBy;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** Gathers stations with their readings: three queries, however many stations. */
@Component
class StationRecords {

    private final StationRepository stations;
    private final LightReadingRepository readings;
    private final GridRepository grids;

    StationRecords(StationRepository stations, LightReadingRepository readings, GridRepository grids) {
        this.stations = stations;
        this.readings = readings;
        this.grids = grids;
    }

    Optional<StationRecord> find(UUID id) {
        return stations.findById(id).map(List::of).map(this::gather).map(found -> found.get(0));
    }

    /** The station that a reading was taken of. */
    Optional<StationRecord> ofReading(UUID readingId) {
        return readings.findById(readingId).map(LightReadingEntity::stationId).flatMap(this::find);
    }

    /** In the order created. */
    List<StationRecord> ofLabDay(UUID labDayId) {
        return gather(stations.findByLabDayIdOrderByCreatedAtAscIdAsc(labDayId));
    }

    private List<StationRecord> gather(List<StationEntity> found) {
        var ids = found.stream().map(StationEntity::id).toList();
        var readingsOf = readings.findByStationIdInOrderByOriginAcceptedAtAscIdAsc(ids).stream()
                .collect(groupingBy(LightReadingEntity::stationId));
        var gridsOf = grids.findByStationIdInOrderByOriginAcceptedAtAscIdAsc(ids).stream()
                .collect(groupingBy(GridEntity::stationId));
        return found.stream()
                .map(station -> new StationRecord(
                        station,
                        readingsOf.getOrDefault(station.id(), List.of()),
                        gridsOf.getOrDefault(station.id(), List.of())))
                .toList();
    }
}
