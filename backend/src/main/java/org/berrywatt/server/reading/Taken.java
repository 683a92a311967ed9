package org.berrywatt.server.reading;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.time.Instant;
import org.berrywatt.server.typed.Origin;

/**
 * Who read a cell and when. A correction writes down anew what was read then, however late the slip is found.
 *
 * @param by for example {@code "team 7d4c..."}
 * @param at the server's clock
 */
@Embeddable
record Taken(
        @Column(name = "read_by") String by,
        @Column(name = "read_at") Instant at) {

    static Taken now(Origin origin) {
        return new Taken(origin.writtenBy(), origin.acceptedAt());
    }
}
