package org.berrywatt.server.safety;

import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.IncidentAnswer;
import org.berrywatt.server.typed.Origin;
import org.jspecify.annotations.Nullable;

/** An accident or a near miss; written once and looked at once. A correction is a new incident that names the one it replaces. */
@Entity
class Incident {

    @Id
    private UUID id;

    @Column
    private UUID labDayId;

    private @Nullable UUID teamId;
    private @Nullable String zone;
    private String happened;
    private String done;
    private @Nullable UUID replaces;

    @Column
    private @Nullable String lookedBy;

    private @Nullable Instant lookedAt;

    @Embedded
    private Origin origin;

    protected Incident() {}

    Incident(UUID id, IncidentEntry entry, Origin origin) {
        this.id = id;
        this.labDayId = entry.labDayId();
        this.teamId = entry.teamId();
        this.zone = entry.zone();
        this.happened = entry.happened();
        this.done = entry.done();
        this.replaces = entry.replaces();
        this.origin = origin;
    }

    UUID id() {
        return id;
    }

    @Nullable
    UUID replaces() {
        return replaces;
    }

    UUID labDayId() {
        return labDayId;
    }

    @Nullable
    Instant lookedAt() {
        return lookedAt;
    }

    void look(String by, Instant at) {
        lookedBy = by;
        lookedAt = at;
    }

    IncidentAnswer answer(@Nullable Instant looked, @Nullable UUID replacedBy) {
        return new IncidentAnswer(
                id, teamId, zone, happened, done, origin.noticedAt(), origin.acceptedAt(), looked, replacedBy);
    }
}
