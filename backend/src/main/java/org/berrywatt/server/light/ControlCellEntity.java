package org.berrywatt.server.light;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A choice of a day's control cell; written once, the one with the highest position holds. */
@Entity
@Table(name = "control_cell")
class ControlCellEntity {

    @Id
    private UUID id;

    @Column(nullable = false)
    private UUID labDayId;

    @Column(nullable = false)
    private int position;

    private @Nullable UUID cellId;

    @Column(nullable = false)
    private String writtenBy;

    @Column(nullable = false)
    private Instant chosenAt;

    protected ControlCellEntity() {}

    ControlCellEntity(UUID labDayId, int position, @Nullable UUID cellId, String writtenBy, Instant chosenAt) {
        this.id = UUID.randomUUID();
        this.labDayId = labDayId;
        this.position = position;
        this.cellId = cellId;
        this.writtenBy = writtenBy;
        this.chosenAt = chosenAt;
    }

    int position() {
        return position;
    }

    @Nullable
    UUID cellId() {
        return cellId;
    }
}
