package org.berrywatt.server.cell;

import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;
import org.berrywatt.server.typed.Origin;
import org.berrywatt.server.typed.Words;

/** A registered cell; only its team may change, when that is joined to another. What it is made of stands on its build sheets. */
@Entity
@Table(name = "cell")
class CellEntity {

    @Id
    private UUID id;

    private UUID teamId;
    private UUID labDayId;
    private String label;

    @Column(nullable = false)
    private String labelKey;

    @Embedded
    private Origin origin;

    protected CellEntity() {}

    CellEntity(UUID id, UUID teamId, UUID labDayId, String label, Origin origin) {
        this.id = id;
        this.teamId = teamId;
        this.labDayId = labDayId;
        this.label = label;
        this.labelKey = Words.key(label);
        this.origin = origin;
    }

    UUID id() {
        return id;
    }

    UUID teamId() {
        return teamId;
    }

    CellIdentity identity() {
        return new CellIdentity(id, teamId, labDayId);
    }

    UUID labDayId() {
        return labDayId;
    }

    String label() {
        return label;
    }

    Origin origin() {
        return origin;
    }
}
