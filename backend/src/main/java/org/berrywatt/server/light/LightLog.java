package org.berrywatt.server.light;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.berrywatt.contract.SetAsideAnswer;
import org.jspecify.annotations.Nullable;

/**
 * Every reading ever taken of a station's light.
 *
 * @param readings in the order written, replaced ones among them
 * @param setAsides in the order written
 */
record LightLog(List<LightReadingEntity> readings, List<LightSetAside> setAsides) {

    /** The readings that count, in the order read: not replaced, not set aside. */
    List<LightReading> valid() {
        Set<UUID> replaced = readings.stream()
                .map(LightReadingEntity::replaces)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        return readings.stream()
                .filter(reading -> !replaced.contains(reading.id()) && !isSetAside(reading.id()))
                .map(this::view)
                .sorted(Comparator.comparing(LightReading::at).thenComparing(LightReading::id))
                .toList();
    }

    LightReading view(LightReadingEntity reading) {
        return reading.view(first(reading).acceptedAt());
    }

    /** The reading that corrects this one, if any. */
    @Nullable
    UUID replacementOf(UUID readingId) {
        return readings.stream()
                .filter(later -> readingId.equals(later.replaces()))
                .map(LightReadingEntity::id)
                .findFirst()
                .orElse(null);
    }

    /** Every time that a reading was set aside or taken back. */
    List<SetAsideAnswer> setAsidesOf(LightReadingEntity reading) {
        return of(reading.id()).map(LightSetAside::answer).toList();
    }

    /** As it would be with one more of them. */
    LightLog with(LightSetAside setAside) {
        var more = new ArrayList<>(setAsides);
        more.add(setAside);
        return new LightLog(readings, more);
    }

    Optional<LightReading> standing(UUID readingId) {
        return readings.stream()
                .filter(reading -> reading.id().equals(readingId) && replacementOf(readingId) == null)
                .map(this::view)
                .findFirst();
    }

    private boolean isSetAside(UUID readingId) {
        return of(readingId)
                .reduce((earlier, later) -> later)
                .filter(last -> !last.takesBack())
                .isPresent();
    }

    private Stream<LightSetAside> of(UUID readingId) {
        return setAsides.stream().filter(setAside -> setAside.readingId().equals(readingId));
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
