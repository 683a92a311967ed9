package org.berrywatt.server.plan;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Somebody's word which planned cell a registered one is. */
@Entity
@Table(name = "planned_cell")
class PlannedCellEntity {

    @Id
    private UUID id;

    @Column(nullable = false)
    private UUID labDayId;

    private UUID cellId;
    private @Nullable String label;

    @Column(nullable = false)
    private String writtenBy;

    @Column(nullable = false)
    private Instant acceptedAt;

    protected PlannedCellEntity() {}

    PlannedCellEntity(
            UUID id, UUID labDayId, UUID cellId, @Nullable String label, String writtenBy, Instant acceptedAt) {
        this.id = id;
        this.labDayId = labDayId;
        this.cellId = cellId;
        this.label = label;
        this.writtenBy = writtenBy;
        this.acceptedAt = acceptedAt;
    }

    UUID cellId() {
        return cellId;
    }

    @Nullable
    String label() {
        return label;
    }
}
