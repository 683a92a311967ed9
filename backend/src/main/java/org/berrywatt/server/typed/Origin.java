package org.berrywatt.server.typed;

import jakarta.persistence.Embeddable;
import java.time.Instant;

/**
 * Where an entry comes from.
 *
 * @param writtenBy who wrote it, for example {@code "team 7d4c..."}
 * @param noticedAt the phone's own clock, which may be wrong
 * @param acceptedAt the server's clock; entries are ordered by this one
 */
@Embeddable
public record Origin(String writtenBy, Instant noticedAt, Instant acceptedAt) {

    private static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");
    private static final Instant LATEST = Instant.parse("2200-01-01T00:00:00Z");

    /** An origin whose phone's clock is held within two centuries: a broken clock must not cost an entry. */
    public static Origin of(String writtenBy, Instant noticedAt, Instant acceptedAt) {
        return new Origin(writtenBy, held(Given.need("noticedAt", noticedAt)), acceptedAt);
    }

    /** What the writer is, a team or a teacher, without saying which. */
    public String writer() {
        return writtenBy.split(" ", 2)[0];
    }

    private static Instant held(Instant noticedAt) {
        if (noticedAt.isBefore(EARLIEST)) {
            return EARLIEST;
        }
        return noticedAt.isAfter(LATEST) ? LATEST : noticedAt;
    }
}
