package org.berrywatt.server.light;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.berrywatt.server.typed.TypedAmount;
import org.jspecify.annotations.Nullable;

/**
 * A station with every reading ever taken of it.
 *
 * @param readings oldest first, replaced ones among them
 */
record StationRecord(StationEntity station, List<LightReadingEntity> readings) {

    private static final double DEGREES_PER_RADIAN = 180 / Math.PI;

    Station view() {
        var setup = station.setup();
        return new Station(
                station.id(),
                station.labDayId(),
                setup.name(),
                setup.lamp(),
                setup.instrument(),
                distanceM(),
                angleDeg(),
                validReadings());
    }

    @Nullable
    Double distanceM() {
        return Optional.ofNullable(station.setup().distance())
                .map(TypedAmount::valueSi)
                .orElse(null);
    }

    @Nullable
    Double angleDeg() {
        return Optional.ofNullable(station.setup().angle())
                .map(angle -> angle.valueSi() * DEGREES_PER_RADIAN)
                .orElse(null);
    }

    /** The reading that corrects this one, if any. */
    @Nullable
    UUID replacementOf(LightReadingEntity reading) {
        return readings.stream()
                .filter(later -> reading.id().equals(later.replaces()))
                .map(LightReadingEntity::id)
                .findFirst()
                .orElse(null);
    }

    private List<LightReading> validReadings() {
        var replaced = readings.stream()
                .map(LightReadingEntity::replaces)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        return readings.stream()
                .filter(reading -> !replaced.contains(reading.id()))
                .map(LightReadingEntity::view)
                .toList();
    }
}
