package org.berrywatt.server.light;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A choice of a day's control cell; written once, the latest holds. */
@Entity
@Table(name = "control_cell")
class ControlCellEntity {

    @Id
    private UUID id;

    @Column(nullable = false)
    private UUID labDayId;

    private @Nullable UUID cellId;

    @Column(nullable = false)
    private String writtenBy;

    @Column(nullable = false)
    private Instant chosenAt;

    protected ControlCellEntity() {}

    ControlCellEntity(UUID labDayId, @Nullable UUID cellId, String writtenBy, Instant chosenAt) {
        this.id = UUID.randomUUID();
        this.labDayId = labDayId;
        this.cellId = cellId;
        this.writtenBy = writtenBy;
        this.chosenAt = chosenAt;
    }

    @Nullable
    UUID cellId() {
        return cellId;
    }
}
