package org.berrywatt.server.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.quantity.Field;
import org.berrywatt.reading.Fields;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.reading.Measured;
import org.berrywatt.server.reading.ReadingKind;
import org.berrywatt.server.reading.RecordedReading;
import org.jspecify.annotations.Nullable;

/** Single readings that a teacher should look at before they are trusted. */
final class ReadingMatters {

    /** So soon afterwards a cell is still the same (common practice, no source). */
    private static final Duration SOON = Duration.ofMinutes(10);

    /** Share by which two readings may differ; the leaderboard asks the same of two readers. */
    private static final double ALIKE = 0.15;

    private static final double PERCENT = 100;

    private ReadingMatters() {}

    static Stream<Matter> of(DeskRecord record) {
        return record.cells().stream()
                .filter(cell -> cell.failure().isEmpty())
                .flatMap(cell -> Stream.concat(
                        unusual(cell, record.readingsOf(cell)), apart(cell, record.readingsOf(cell)).stream()));
    }

    private static Stream<Matter> unusual(Cell cell, List<RecordedReading> readings) {
        return readings.stream()
                .filter(ReadingMatters::isUnusual)
                .map(reading -> new Matter(
                        Kind.UNUSUAL,
                        reading.id(),
                        cell.teamId(),
                        cell.id(),
                        reading.stationId(),
                        reading.readAt(),
                        Map.of("cell", cell.label()),
                        null));
    }

    private static boolean isUnusual(RecordedReading reading) {
        return isUnusual(reading.voltage(), Fields.VOLTAGE) || isUnusual(reading.current(), Fields.CURRENT);
    }

    private static boolean isUnusual(@Nullable Measured shown, Field field) {
        return shown != null && !(shown.valueSi() >= field.usualLowSi() && shown.valueSi() <= field.usualHighSi());
    }

    /** The last two light readings at one station, where they differ. */
    private static Optional<Matter> apart(Cell cell, List<RecordedReading> readings) {
        List<RecordedReading> lit = readings.stream()
                .filter(reading -> reading.kind() == ReadingKind.LIGHT)
                .toList();
        return IntStream.of(lit.size() - 1)
                .filter(last -> last > 0)
                .mapToObj(last -> apart(cell, lit.get(last - 1), lit.get(last)))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Matter> apart(Cell cell, RecordedReading before, RecordedReading after) {
        double difference =
                Math.max(difference(before.voltage(), after.voltage()), difference(before.current(), after.current()));
        boolean together =
                Objects.equals(before.stationId(), after.stationId()) && isSoon(before.readAt(), after.readAt());
        return together && difference > ALIKE
                ? Optional.of(new Matter(
                        Kind.APART,
                        after.id(),
                        cell.teamId(),
                        cell.id(),
                        after.stationId(),
                        after.readAt(),
                        Map.of("cell", cell.label(), "percent", Math.rint(difference * PERCENT)),
                        null))
                : Optional.empty();
    }

    private static boolean isSoon(Instant before, Instant after) {
        return Duration.between(before, after).compareTo(SOON) <= 0;
    }

    /** Share of the earlier one by which the later one differs, beyond what both displays could not show. */
    private static double difference(@Nullable Measured before, @Nullable Measured after) {
        if (before == null || after == null || !(Math.abs(before.valueSi()) > 0)) {
            return 0;
        }
        double apart = Math.abs(after.valueSi() - before.valueSi()) - before.resolutionSi() - after.resolutionSi();
        return Math.max(0, apart) / Math.abs(before.valueSi());
    }
}
