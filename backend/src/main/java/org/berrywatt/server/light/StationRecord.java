package org.berrywatt.server.light;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.light.Uniformity;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.TypedAmount;
import org.jspecify.annotations.Nullable;

/**
 * A station with every reading ever taken of it.
 *
 * @param readings oldest first, replaced ones among them
 * @param grids how even its light is, oldest first
 */
record StationRecord(StationEntity station, List<LightReadingEntity> readings, List<GridEntity> grids) {

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
                uniformity(),
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

    private @Nullable Uniformity uniformity() {
        return grids.isEmpty() ? null : grids.get(grids.size() - 1).uniformity();
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

    /**
     * The station as it would be with another number in place of a reading.
     *
     * @throws Refusal {@code replaced.already}
     */
    Station ifCorrected(UUID readingId, RawLight light) {
        var wrong = view().readings().stream()
                .filter(reading -> reading.id().equals(readingId))
                .findFirst()
                .orElseThrow(() -> Refusal.of(ProblemCode.REPLACED_ALREADY));
        return view().with(light.inPlaceOf(wrong));
    }

    private List<LightReading> validReadings() {
        var replaced = readings.stream()
                .map(LightReadingEntity::replaces)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        return readings.stream()
                .filter(reading -> !replaced.contains(reading.id()))
                .map(this::view)
                .sorted(Comparator.comparing(LightReading::at).thenComparing(LightReading::id))
                .toList();
    }

    LightReading view(LightReadingEntity reading) {
        return reading.view(first(reading).acceptedAt());
    }

    /** The reading at the start of a chain of corrections: the light was read then, whenever the slip was found. */
    private LightReadingEntity first(LightReadingEntity reading) {
        return readings.stream()
                .filter(earlier -> earlier.id().equals(reading.replaces()))
                .findFirst()
                .map(this::first)
                .orElse(reading);
    }
}
