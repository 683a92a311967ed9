package org.berrywatt.server.cell;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;
import org.berrywatt.contract.CellEventAnswer;
import org.berrywatt.server.typed.Origin;
import org.jspecify.annotations.Nullable;

/** A refill or a repair; written once. */
@Entity
@Table(name = "cell_event")
class CellEventEntity {

    static final String REFILL = "refill";
    static final String REPAIR = "repair";

    @Id
    private UUID id;

    private UUID cellId;
    private String kind;
    private @Nullable String note;

    @Embedded
    private Origin origin;

    protected CellEventEntity() {}

    CellEventEntity(UUID id, UUID cellId, String kind, @Nullable String note, Origin origin) {
        this.id = id;
        this.cellId = cellId;
        this.kind = kind;
        this.note = note;
        this.origin = origin;
    }

    UUID cellId() {
        return cellId;
    }

    boolean isRefill() {
        return kind.equals(REFILL);
    }

    Origin origin() {
        return origin;
    }

    CellEventAnswer answer() {
        return new CellEventAnswer(id, cellId, kind, note, origin.acceptedAt());
    }
}
