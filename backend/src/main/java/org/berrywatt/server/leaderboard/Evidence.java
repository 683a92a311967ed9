package org.berrywatt.server.leaderboard;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.berrywatt.server.reading.ReadingKind;
import org.berrywatt.server.reading.RecordedReading;
import org.jspecify.annotations.Nullable;

/**
 * Which of a cell's valid readings count.
 *
 * <ul>
 *   <li>Under light the latest one counts, be it a light reading or a load sweep. A load sweep also stands in for a light
 *       reading that follows it at the same station within {@link #SWEEP_STANDS}: it knows the fill factor as well.
 *   <li>In the dark the one nearest in time to that counts; of two equally near ones the later.
 * </ul>
 *
 * @param underLight light reading or load sweep
 * @param passedOver a light reading for which the sweep stands in
 * @param toggles the latest series of light toggles
 */
record Evidence(
        Optional<RecordedReading> underLight,
        Optional<RecordedReading> dark,
        Optional<RecordedReading> passedOver,
        Optional<RecordedReading> toggles) {

    /** A fresh cell changes over tens of minutes (common practice, no source); half of that is safely the same cell. */
    static final Duration SWEEP_STANDS = Duration.ofMinutes(15);

    /** @param readings valid readings of one cell, oldest first */
    static Evidence among(List<RecordedReading> readings) {
        Optional<RecordedReading> latest =
                latest(readings, reading -> reading.kind().isUnderLight());
        Optional<RecordedReading> sweep = latest.flatMap(reading -> sweepFor(reading, readings));
        Optional<RecordedReading> counting = sweep.or(() -> latest);
        return new Evidence(
                counting,
                counting.flatMap(reading -> nearestDark(reading, readings)).or(() -> lastDark(readings)),
                sweep.flatMap(it -> latest),
                latest(readings, reading -> reading.kind() == ReadingKind.TOGGLES));
    }

    private static Optional<RecordedReading> sweepFor(RecordedReading light, List<RecordedReading> readings) {
        return light.kind() == ReadingKind.SWEEP
                ? Optional.empty()
                : latest(readings, reading -> reading.kind() == ReadingKind.SWEEP && standsFor(reading, light));
    }

    private static boolean standsFor(RecordedReading sweep, RecordedReading light) {
        return isSame(sweep.stationId(), light.stationId())
                && apart(sweep, light).compareTo(SWEEP_STANDS) <= 0;
    }

    private static boolean isSame(@Nullable Object one, @Nullable Object other) {
        return one != null && one.equals(other);
    }

    private static Optional<RecordedReading> nearestDark(RecordedReading light, List<RecordedReading> readings) {
        return darks(readings)
                .min(Comparator.<RecordedReading, Duration>comparing(dark -> apart(dark, light))
                        .thenComparing(RecordedReading::readAt, Comparator.reverseOrder()));
    }

    private static Optional<RecordedReading> lastDark(List<RecordedReading> readings) {
        return latest(readings, reading -> reading.kind() == ReadingKind.DARK);
    }

    private static Stream<RecordedReading> darks(List<RecordedReading> readings) {
        return readings.stream().filter(reading -> reading.kind() == ReadingKind.DARK);
    }

    private static Optional<RecordedReading> latest(
            List<RecordedReading> oldestFirst, Predicate<RecordedReading> wanted) {
        return oldestFirst.stream().filter(wanted).reduce((earlier, later) -> later);
    }

    private static Duration apart(RecordedReading one, RecordedReading other) {
        return Duration.between(one.readAt(), other.readAt()).abs();
    }
}
