package org.berrywatt.server.desk;

import static java.time.temporal.ChronoUnit.DAYS;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.server.labday.LabDay;

/** Days that were to be kept until a date that is near, or over. Only their teacher deletes them. */
final class RetentionMatters {

    private static final int NEAR_DAYS = 14;

    private RetentionMatters() {}

    static Stream<Matter> of(DeskRecord record) {
        var today = record.now().atOffset(ZoneOffset.UTC).toLocalDate();
        return Optional.ofNullable(record.day().keepUntil()).stream()
                .filter(last -> DAYS.between(today, last) <= NEAR_DAYS)
                .map(last -> matter(record.day(), today, last));
    }

    private static Matter matter(LabDay day, LocalDate today, LocalDate last) {
        long left = DAYS.between(today, last);
        return left >= 0
                ? matter(Kind.KEEP_ENDS, day, last.minusDays(NEAR_DAYS), left)
                : matter(Kind.KEEP_OVER, day, last.plusDays(1), -left);
    }

    private static Matter matter(Kind kind, LabDay day, LocalDate since, long days) {
        return new Matter(kind, day.id(), null, null, null, start(since), Map.of("days", days), null);
    }

    private static Instant start(LocalDate date) {
        return date.atStartOfDay(ZoneOffset.UTC).toInstant();
    }
}
