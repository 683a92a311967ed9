package org.berrywatt.server.paper;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;

/**
 * Times as people write them down: of the lab day alone, with its date, or whole with an offset (ISO 8601). None lies in the
 * future, nor more than a day from the lab day.
 */
record PaperTime(LocalDate day, ZoneId zone, Instant now) {

    static final String COLUMN = "read_at";
    private static final List<DateTimeFormatter> DATED = List.of(
            DateTimeFormatter.ISO_LOCAL_DATE_TIME,
            DateTimeFormatter.ofPattern("yyyy-MM-dd H:mm[:ss]", Locale.ROOT),
            DateTimeFormatter.ofPattern("d.M.yyyy H:mm[:ss]", Locale.ROOT));
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("H:mm[:ss]", Locale.ROOT);

    /** @throws Refusal {@code choice.unknown} for a zone that nobody knows */
    static ZoneId zone(@Nullable String name) {
        try {
            return name == null ? ZoneId.systemDefault() : ZoneId.of(name);
        } catch (DateTimeException unknown) {
            throw Refusal.of(ProblemCode.CHOICE_UNKNOWN)
                    .field("zone")
                    .value(Words.excerpt(String.valueOf(name)))
                    .limit("Europe/Berlin, UTC");
        }
    }

    /**
     * The moment of a row, or null when none was written down.
     *
     * @throws Refusal {@code paper.time}
     */
    @Nullable
    Instant of(PaperRow row) {
        var text = row.text(COLUMN);
        if (text.isEmpty()) {
            return null;
        }
        return read(text)
                .filter(moment -> !moment.isAfter(now) && isNear(moment))
                .orElseThrow(() -> Refusal.of(ProblemCode.PAPER_TIME)
                        .field(COLUMN)
                        .value(Words.excerpt(text))
                        .limit(day));
    }

    private boolean isNear(Instant moment) {
        return !moment.isBefore(day.minusDays(1).atStartOfDay(zone).toInstant())
                && moment.isBefore(day.plusDays(2).atStartOfDay(zone).toInstant());
    }

    private Optional<Instant> read(String text) {
        try {
            return Optional.of(OffsetDateTime.parse(text).toInstant());
        } catch (DateTimeParseException local) {
            return DATED.stream()
                    .flatMap(format -> dated(text, format).stream())
                    .findFirst()
                    .or(() -> clock(text))
                    .map(moment -> moment.atZone(zone).toInstant());
        }
    }

    private static Optional<LocalDateTime> dated(String text, DateTimeFormatter format) {
        try {
            return Optional.of(LocalDateTime.parse(text, format));
        } catch (DateTimeParseException other) {
            return Optional.empty();
        }
    }

    private Optional<LocalDateTime> clock(String text) {
        try {
            return Optional.of(day.atTime(LocalTime.parse(text, CLOCK)));
        } catch (DateTimeParseException noTime) {
            return Optional.empty();
        }
    }
}
