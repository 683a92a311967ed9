package org.berrywatt.server.logger;

import java.time.Instant;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.LoggerAnswer;
import org.berrywatt.server.access.Caller;
import org.jspecify.annotations.Nullable;

/**
 * A device that may send readings, of one team's cells or of one station's light.
 *
 * @param teacher who let it; what it says of a station is that teacher's entry
 */
record Device(
        UUID id,
        UUID labDayId,
        @Nullable UUID teamId,
        @Nullable UUID stationId,
        String name,
        Caller.Teacher teacher,
        Instant madeAt,
        @Nullable Instant lastAt,
        @Nullable Instant revokedAt) {

    boolean isOfTeam() {
        return teamId != null;
    }

    UUID team() {
        return Objects.requireNonNull(teamId);
    }

    UUID station() {
        return Objects.requireNonNull(stationId);
    }

    LoggerAnswer answer(@Nullable String token) {
        return new LoggerAnswer(id, name, teamId, stationId, token, madeAt, lastAt, revokedAt);
    }
}
