package org.berrywatt.server.light;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.server.typed.Origin;
import org.berrywatt.server.typed.TypedAmount;
import org.hibernate.annotations.EmbeddedColumnNaming;
import org.jspecify.annotations.Nullable;

/** A reading of the light at a station; written once. A correction names the reading it replaces. */
@Entity
@Table(name = "light_reading")
class LightReadingEntity {

    @Id
    private UUID id;

    private UUID stationId;
    private boolean lux;

    @Embedded
    @EmbeddedColumnNaming("reading_%s")
    private TypedAmount reading;

    private @Nullable UUID replaces;

    @Embedded
    private Origin origin;

    protected LightReadingEntity() {}

    LightReadingEntity(UUID id, UUID stationId, RawLight light, @Nullable UUID replaces, Origin origin) {
        this.id = id;
        this.stationId = stationId;
        this.lux = light.lux();
        this.reading = light.reading();
        this.replaces = replaces;
        this.origin = origin;
    }

    UUID id() {
        return id;
    }

    UUID stationId() {
        return stationId;
    }

    TypedAmount reading() {
        return reading;
    }

    @Nullable
    UUID replaces() {
        return replaces;
    }

    Instant acceptedAt() {
        return origin.acceptedAt();
    }

    /** @param at when the instrument was read */
    LightReading view(Instant at) {
        return new LightReading(id, lux, reading.valueSi(), reading.resolutionSi(), at);
    }
}
