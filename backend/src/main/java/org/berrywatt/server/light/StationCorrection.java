package org.berrywatt.server.light;

import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.StationSettings;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.typed.TypedAmount;
import org.hibernate.annotations.EmbeddedColumnNaming;
import org.jspecify.annotations.Nullable;

/** Name and settings of a station as they should have been from the start; written once, and the latest of a station hold. */
@Entity
@Table(name = "station_correction")
class StationCorrection {

    @Id
    private UUID id;

    /** Given by the database in the order written. */
    @Column(insertable = false, updatable = false)
    private @Nullable Long position;

    private UUID stationId;
    private String name;
    private String lamp;
    private String instrument;

    @Embedded
    @EmbeddedColumnNaming("distance_%s")
    private @Nullable TypedAmount distance;

    @Embedded
    @EmbeddedColumnNaming("angle_%s")
    private @Nullable TypedAmount angle;

    private String reason;
    private String teacher;

    @Column(nullable = false)
    private String writtenBy;

    private Instant writtenAt;

    protected StationCorrection() {}

    StationCorrection(UUID id, UUID stationId, StationSetup setup, String reason, Caller.Teacher teacher, Instant at) {
        this.id = id;
        this.stationId = stationId;
        this.name = setup.name();
        this.lamp = setup.lamp().key();
        this.instrument = setup.instrument().key();
        this.distance = setup.distance();
        this.angle = setup.angle();
        this.reason = reason;
        this.teacher = teacher.name();
        this.writtenBy = teacher.signature();
        this.writtenAt = at;
    }

    UUID stationId() {
        return stationId;
    }

    StationSetup setup() {
        return new StationSetup(name, LightKeys.lamp(lamp), LightKeys.instrument(instrument), distance, angle);
    }

    StationSettings answer() {
        return setup().settings(reason, teacher, writtenAt);
    }
}
