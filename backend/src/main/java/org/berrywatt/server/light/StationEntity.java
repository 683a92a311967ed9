package org.berrywatt.server.light;

import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.server.typed.TypedAmount;
import org.hibernate.annotations.EmbeddedColumnNaming;
import org.jspecify.annotations.Nullable;

/** A light station; written once. */
@Entity
@Table(name = "station")
class StationEntity {

    @Id
    private UUID id;

    private UUID labDayId;
    private String name;

    private String lamp;
    private String instrument;

    @Embedded
    @EmbeddedColumnNaming("distance_%s")
    private @Nullable TypedAmount distance;

    @Embedded
    @EmbeddedColumnNaming("angle_%s")
    private @Nullable TypedAmount angle;

    @Column(nullable = false)
    private String writtenBy;

    @Column(nullable = false)
    private Instant createdAt;

    protected StationEntity() {}

    StationEntity(UUID id, UUID labDayId, StationSetup setup, String writtenBy, Instant createdAt) {
        this.id = id;
        this.labDayId = labDayId;
        this.name = setup.name();
        this.lamp = setup.lamp().key();
        this.instrument = setup.instrument().key();
        this.distance = setup.distance();
        this.angle = setup.angle();
        this.writtenBy = writtenBy;
        this.createdAt = createdAt;
    }

    UUID id() {
        return id;
    }

    UUID labDayId() {
        return labDayId;
    }

    Instant createdAt() {
        return createdAt;
    }

    StationSetup setup() {
        return new StationSetup(name, LightKeys.lamp(lamp), LightKeys.instrument(instrument), distance, angle);
    }
}
