package org.berrywatt.server.reading;

import static java.util.stream.Collectors.groupingBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.berrywatt.contract.CurvePoint;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.SetAsideAnswer;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.typed.TypedAmount;
import org.jspecify.annotations.Nullable;

/** Readings as they travel. */
final class ReadingAnswers {

    private ReadingAnswers() {}

    /** Readings of one cell or several, corrections among them, with what was set aside of them in the order written. */
    static List<ReadingAnswer> of(List<ReadingEntity> readings, List<SetAside> setAsides) {
        var setAsideOf = setAsides.stream().map(SetAside::answer).collect(groupingBy(SetAsideAnswer::readingId));
        Map<UUID, UUID> replacements = new HashMap<>();
        for (var reading : readings) {
            var replaced = reading.replaces();
            if (replaced != null) {
                replacements.put(replaced, reading.id());
            }
        }
        return readings.stream()
                .map(reading ->
                        of(reading, replacements.get(reading.id()), setAsideOf.getOrDefault(reading.id(), List.of())))
                .toList();
    }

    /** A reading that was just accepted. */
    static ReadingAnswer fresh(ReadingEntity entity) {
        return of(entity, null, List.of());
    }

    private static ReadingAnswer of(ReadingEntity entity, @Nullable UUID replacedBy, List<SetAsideAnswer> setAside) {
        var reading = entity.reading();
        var voltage = reading.voltage();
        var current = reading.current();
        return new ReadingAnswer(
                entity.id(),
                entity.cellId(),
                reading.kind().key(),
                entity.origin().writer(),
                reading.stationId(),
                typed(voltage),
                voltage == null ? null : voltage.valueSi(),
                typed(current),
                current == null ? null : current.valueSi(),
                typed(reading.swappedVoltage()),
                typed(reading.swappedCurrent()),
                zero(voltage, reading.swappedVoltage()),
                zero(current, reading.swappedCurrent()),
                reading.toggles().stream().map(ToggleRow::answer).toList(),
                reading.points().stream().map(ReadingAnswers::row).toList(),
                reading.points().stream().map(ReadingAnswers::point).toList(),
                reading.unusualConfirmed(),
                entity.origin().acceptedAt(),
                entity.taken().at(),
                entity.reason(),
                replacedBy,
                setAside);
    }

    private static @Nullable Typed typed(@Nullable TypedAmount amount) {
        return amount == null ? null : amount.typed();
    }

    private static @Nullable Double zero(@Nullable TypedAmount straight, @Nullable TypedAmount swapped) {
        return straight == null || swapped == null
                ? null
                : Leads.swap(straight, swapped).zero();
    }

    /** What was typed of a row. */
    private static SweepPoint row(SweepRow row) {
        var load = row.load();
        return new SweepPoint(
                load == null ? null : load.typed(),
                row.voltage().typed(),
                row.current().typed());
    }

    private static CurvePoint point(SweepRow row) {
        return new CurvePoint(row.voltage().valueSi(), row.current().valueSi());
    }
}
