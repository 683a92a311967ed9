package org.berrywatt.server.live;

import java.time.Clock;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.springframework.stereotype.Component;

/**
 * Counts the changes of each lab day. The count begins at the time of the server's start in milliseconds, so that it also
 * grows over a restart: no day changes a thousand times a second.
 */
@Component
class Revisions {

    private final long start;
    private final ConcurrentMap<UUID, Long> revisions = new ConcurrentHashMap<>();

    Revisions(Clock clock) {
        start = clock.millis();
    }

    long of(UUID labDayId) {
        return revisions.getOrDefault(labDayId, start);
    }

    void grow(UUID labDayId) {
        revisions.merge(labDayId, start + 1, (before, first) -> before + 1);
    }
}
