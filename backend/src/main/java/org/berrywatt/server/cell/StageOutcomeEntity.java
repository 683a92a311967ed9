package org.berrywatt.server.cell;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;
import org.berrywatt.server.typed.Origin;
import org.jspecify.annotations.Nullable;

/** How a stage of a cell ended; written once. A correction is a new outcome that names the one it replaces. */
@Entity
@Table(name = "stage_outcome")
class StageOutcomeEntity {

    @Id
    private UUID id;

    private UUID cellId;
    private String stage;
    private boolean passed;
    private @Nullable String failure;
    private @Nullable String note;
    private @Nullable UUID replaces;

    @Embedded
    private Origin origin;

    protected StageOutcomeEntity() {}

    StageOutcomeEntity(UUID id, UUID cellId, StageEnd end, @Nullable UUID replaces, Origin origin) {
        this.id = id;
        this.cellId = cellId;
        this.stage = end.stage();
        this.passed = end.failure() == null;
        this.failure = end.failure();
        this.note = end.note();
        this.replaces = replaces;
        this.origin = origin;
    }

    UUID id() {
        return id;
    }

    UUID cellId() {
        return cellId;
    }

    @Nullable
    String note() {
        return note;
    }

    @Nullable
    UUID replaces() {
        return replaces;
    }

    Origin origin() {
        return origin;
    }

    StageOutcome view() {
        return new StageOutcome(id, stage, passed, failure, origin.acceptedAt());
    }
}
