package org.berrywatt.server.safety;

import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.util.UUID;
import org.berrywatt.contract.IncidentAnswer;
import org.berrywatt.server.typed.Origin;
import org.jspecify.annotations.Nullable;

/** An accident or a near miss; written once. A correction is a new incident that names the one it replaces. */
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

    IncidentAnswer answer(@Nullable UUID replacedBy) {
        return new IncidentAnswer(
                id, teamId, zone, happened, done, origin.noticedAt(), origin.acceptedAt(), replacedBy);
    }
}
