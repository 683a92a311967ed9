package org.berrywatt.server.light;

import static java.util.stream.Collectors.groupingBy;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** Gathers stations with their records: one query for each kind, however many stations. */
@Component
class StationRecords {

    private static final int MOST_DAYS_KNOWN = 10_000;

    private final StationRepository stations;
    private final StationCorrectionRepository corrections;
    private final StationSpectrumRepository spectra;
    private final LightReadingRepository readings;
    private final LightSetAsideRepository setAsides;
    private final GridRepository grids;
    private final KnownSpectra known;
    private final Cache<UUID, UUID> days =
            Caffeine.newBuilder().maximumSize(MOST_DAYS_KNOWN).build();

    StationRecords(
            StationRepository stations,
            StationCorrectionRepository corrections,
            StationSpectrumRepository spectra,
            LightReadingRepository readings,
            LightSetAsideRepository setAsides,
            GridRepository grids,
            KnownSpectra known) {
        this.stations = stations;
        this.corrections = corrections;
        this.spectra = spectra;
        this.readings = readings;
        this.setAsides = setAsides;
        this.grids = grids;
        this.known = known;
    }

    Optional<StationRecord> find(UUID id) {
        return stations.findById(id).map(List::of).map(this::gather).map(found -> found.get(0));
    }

    /** The day of a station, which it never leaves: every reading in its light asks for it. */
    Optional<UUID> labDayOf(UUID id) {
        return Optional.ofNullable(days.get(
                id, each -> stations.findById(each).map(StationEntity::labDayId).orElse(null)));
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
        var correctionsOf = corrections.findByStationIdInOrderByPosition(ids).stream()
                .collect(groupingBy(StationCorrection::stationId));
        var spectraOf =
                spectra.findByStationIdInOrderByPosition(ids).stream().collect(groupingBy(StationSpectrum::stationId));
        var gridsOf = grids.findByStationIdInOrderByOriginAcceptedAtAscIdAsc(ids).stream()
                .collect(groupingBy(GridEntity::stationId));
        var lightOf = light(ids);
        return found.stream()
                .map(station -> record(
                        station,
                        correctionsOf.getOrDefault(station.id(), List.of()),
                        spectraOf.getOrDefault(station.id(), List.of()),
                        lightOf.getOrDefault(station.id(), List.of()),
                        gridsOf.getOrDefault(station.id(), List.of())))
                .toList();
    }

    private Map<UUID, List<LightReadingEntity>> light(List<UUID> stationIds) {
        return readings.findByStationIdInOrderByOriginAcceptedAtAscIdAsc(stationIds).stream()
                .collect(groupingBy(LightReadingEntity::stationId));
    }

    private StationRecord record(
            StationEntity station,
            List<StationCorrection> corrected,
            List<StationSpectrum> given,
            List<LightReadingEntity> read,
            List<GridEntity> even) {
        return new StationRecord(
                station,
                corrected.isEmpty() ? station.setup() : last(corrected).setup(),
                corrected,
                given,
                given.isEmpty() ? null : known.of(last(given)),
                new LightLog(read, setAsides(read)),
                even);
    }

    private List<LightSetAside> setAsides(List<LightReadingEntity> read) {
        return read.isEmpty()
                ? List.of()
                : setAsides.findByReadingIdInOrderByPosition(
                        read.stream().map(LightReadingEntity::id).toList());
    }

    private static <T> T last(List<T> list) {
        return list.get(list.size() - 1);
    }
}
