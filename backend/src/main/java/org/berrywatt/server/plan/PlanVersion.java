package org.berrywatt.server.plan;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;

/** A saved version of a day's plan; written once. */
@Entity
class PlanVersion {

    @Id
    private UUID id;

    @Column(nullable = false)
    private UUID labDayId;

    private int number;
    private String content;

    @Column(nullable = false)
    private String writtenBy;

    @Column(nullable = false)
    private Instant writtenAt;

    protected PlanVersion() {}

    PlanVersion(UUID id, UUID labDayId, int number, String content, String writtenBy, Instant writtenAt) {
        this.id = id;
        this.labDayId = labDayId;
        this.number = number;
        this.content = content;
        this.writtenBy = writtenBy;
        this.writtenAt = writtenAt;
    }

    int number() {
        return number;
    }

    String content() {
        return content;
    }
}
