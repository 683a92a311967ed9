package org.berrywatt.server.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.UUID;
import org.apache.commons.csv.CSVRecord;
import org.berrywatt.contract.Typed;
import org.jspecify.annotations.Nullable;

/** A row of a file of the demo day, read by column. */
record Row(CSVRecord columns) {

    String text(String column) {
        return columns.get(column);
    }

    @Nullable
    String textOrNothing(String column) {
        return columns.get(column);
    }

    /** What a person typed, its unit inside the text. */
    Typed typed(String column) {
        return new Typed(text(column), null);
    }

    @Nullable
    Typed typedOrNothing(String column) {
        return has(column) ? typed(column) : null;
    }

    UUID id(String column) {
        return UUID.fromString(text(column));
    }

    @Nullable
    UUID idOrNothing(String column) {
        return has(column) ? id(column) : null;
    }

    boolean yes(String column) {
        return Boolean.parseBoolean(text(column));
    }

    int count(String column) {
        return Integer.parseInt(text(column));
    }

    LocalDate date(String column) {
        return LocalDate.parse(text(column));
    }

    /** Local time of the room, which is the server's. */
    Instant at() {
        return LocalDateTime.parse(text("at")).atZone(ZoneId.systemDefault()).toInstant();
    }

    private boolean has(String column) {
        return columns.get(column) != null;
    }
}
