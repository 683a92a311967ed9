package org.berrywatt.server.lesson;

import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.quantity.MeasuringUnit;
import org.berrywatt.quantity.Units;
import org.berrywatt.server.typed.TypedAmount;
import org.berrywatt.server.typed.Words;
import org.hibernate.annotations.EmbeddedColumnNaming;
import org.jspecify.annotations.Nullable;

/** A cell's stay on a heater. A correction is a new stay that names the one it replaces. */
@Entity
@Table(name = "heater_slot")
class HeaterSlotEntity {

    private static final MeasuringUnit CELSIUS = Units.of("degC").orElseThrow();

    @Id
    private UUID id;

    private UUID labDayId;
    private UUID cellId;
    private String heater;
    private String heaterKey;
    private int position;

    @Embedded
    @EmbeddedColumnNaming("target_%s")
    private TypedAmount target;

    private int holdMinutes;
    private Instant inAt;
    private @Nullable Instant outAt;

    @Column
    private @Nullable String note;

    @Column(unique = true)
    private @Nullable UUID replaces;

    @Column(nullable = false)
    private String writtenBy;

    @Column(nullable = false)
    private Instant acceptedAt;

    protected HeaterSlotEntity() {}

    HeaterSlotEntity(UUID id, UUID labDayId, Stay stay, @Nullable UUID replaces, String writtenBy, Instant acceptedAt) {
        this.id = id;
        this.labDayId = labDayId;
        this.cellId = stay.cellId();
        this.heater = stay.heater();
        this.heaterKey = Words.key(stay.heater());
        this.position = stay.position();
        this.target = stay.target();
        this.holdMinutes = stay.holdMinutes();
        this.inAt = stay.inAt();
        this.outAt = stay.outAt();
        this.note = stay.note();
        this.replaces = replaces;
        this.writtenBy = writtenBy;
        this.acceptedAt = acceptedAt;
    }

    UUID labDayId() {
        return labDayId;
    }

    UUID cellId() {
        return cellId;
    }

    TypedAmount target() {
        return target;
    }

    boolean isAt(String heater, int position) {
        return heaterKey.equals(Words.key(heater)) && this.position == position;
    }

    void takeOut(Instant at) {
        outAt = at;
    }

    HeaterSlot view() {
        return new HeaterSlot(id, cellId, heater, position, CELSIUS.fromSi(target.valueSi()), holdMinutes, inAt, outAt);
    }
}
