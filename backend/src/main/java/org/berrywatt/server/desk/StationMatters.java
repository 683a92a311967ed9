package org.berrywatt.server.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.server.light.LightReading;
import org.berrywatt.server.light.Station;
import org.berrywatt.server.reading.RecordedReading;

/** Stations at which cells are read under a light that nobody has read, or not for too long. */
final class StationMatters {

    /** A station is in use for this long after a reading (common practice, no source: a cell takes about 11 minutes). */
    private static final Duration IN_USE = Duration.ofMinutes(30);

    private StationMatters() {}

    static Stream<Matter> of(DeskRecord record) {
        return record.day().entryOpen()
                ? record.stations().stream().flatMap(station -> of(station, record).stream())
                : Stream.empty();
    }

    private static Optional<Matter> of(Station station, DeskRecord record) {
        List<RecordedReading> here = record.readings().values().stream()
                .flatMap(List::stream)
                .filter(reading -> station.id().equals(reading.stationId()))
                .toList();
        Optional<Instant> lit =
                station.readings().stream().map(LightReading::at).max(Instant::compareTo);
        return lit.map(at -> stale(station, here, at, record.now())).orElseGet(() -> dark(station, here));
    }

    private static Optional<Matter> dark(Station station, List<RecordedReading> here) {
        return here.stream()
                .map(RecordedReading::readAt)
                .min(Instant::compareTo)
                .map(since -> Matter.ofStation(
                        Kind.STATION_DARK, station, since, Map.of("station", station.name(), "cells", cells(here))));
    }

    private static Optional<Matter> stale(Station station, List<RecordedReading> here, Instant lit, Instant now) {
        Instant staleAt = lit.plus(Duration.ofMinutes(station.lamp().staleAfterMinutes()));
        boolean inUse = here.stream().anyMatch(reading -> reading.readAt().isAfter(now.minus(IN_USE)));
        return inUse && now.isAfter(staleAt)
                ? Optional.of(Matter.ofStation(
                        Kind.STATION_STALE,
                        station,
                        staleAt,
                        Map.of(
                                "station", station.name(),
                                "minutes", Duration.between(lit, now).toMinutes())))
                : Optional.empty();
    }

    private static long cells(List<RecordedReading> here) {
        return here.stream().map(RecordedReading::cellId).distinct().count();
    }
}
