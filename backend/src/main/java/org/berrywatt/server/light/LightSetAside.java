package org.berrywatt.server.light;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.SetAsideAnswer;
import org.berrywatt.server.access.Caller;
import org.jspecify.annotations.Nullable;

/** One time that a light reading was set aside or taken back; written once, and the latest of a reading holds. */
@Entity
@Table(name = "light_set_aside")
class LightSetAside {

    @Id
    private UUID id;

    /** Given by the database in the order written. */
    @Column(insertable = false, updatable = false)
    private @Nullable Long position;

    private UUID readingId;
    private @Nullable String reason;
    private String teacher;

    @Column(nullable = false)
    private String writtenBy;

    private Instant writtenAt;

    protected LightSetAside() {}

    /** @param reason null takes the reading back */
    LightSetAside(UUID id, UUID readingId, @Nullable String reason, Caller.Teacher teacher, Instant at) {
        this.id = id;
        this.readingId = readingId;
        this.reason = reason;
        this.teacher = teacher.name();
        this.writtenBy = teacher.signature();
        this.writtenAt = at;
    }

    UUID readingId() {
        return readingId;
    }

    boolean takesBack() {
        return reason == null;
    }

    SetAsideAnswer answer() {
        return new SetAsideAnswer(id, readingId, reason, teacher, writtenAt);
    }
}
