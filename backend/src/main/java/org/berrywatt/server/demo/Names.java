package org.berrywatt.server.demo;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Under which ids and title the demo day is entered.
 *
 * @param titleEnding what follows the day's title
 */
record Names(UnaryOperator<UUID> ids, String titleEnding) {

    private static final DateTimeFormatter CLOCK =
            DateTimeFormatter.ofPattern(" (HH:mm)").withZone(ZoneId.systemDefault());

    /** As the files have them, the same at every start. */
    static Names asWritten() {
        return new Names(UnaryOperator.identity(), "");
    }

    /** Of a day of its own that begins again at every start. */
    static Names replayedAt(Instant start) {
        return new Names(
                id -> UUID.nameUUIDFromBytes((id + "@" + start).getBytes(StandardCharsets.UTF_8)),
                ", replayed" + CLOCK.format(start));
    }

    UUID of(UUID written) {
        return ids.apply(written);
    }

    @Nullable
    UUID ofNullable(@Nullable UUID written) {
        return written == null ? null : of(written);
    }

    String title(String written) {
        return written + titleEnding;
    }
}
