package org.berrywatt.server.lesson;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.TimerAnswer;
import org.jspecify.annotations.Nullable;

/** A timer, kept as the time of its end. */
@Entity
@Table(name = "class_timer")
class TimerEntity {

    @Id
    private UUID id;

    private UUID labDayId;
    private String words;
    private @Nullable UUID teamId;
    private @Nullable UUID cellId;

    @Column(nullable = false)
    private String writtenBy;

    private Instant startedAt;
    private Instant endsAt;
    private @Nullable Instant stoppedAt;

    protected TimerEntity() {}

    TimerEntity(UUID id, UUID labDayId, TimerScope scope, String writtenBy, Instant startedAt, Instant endsAt) {
        this.id = id;
        this.labDayId = labDayId;
        this.words = scope.words();
        this.teamId = scope.teamId();
        this.cellId = scope.cellId();
        this.writtenBy = writtenBy;
        this.startedAt = startedAt;
        this.endsAt = endsAt;
    }

    UUID id() {
        return id;
    }

    UUID labDayId() {
        return labDayId;
    }

    @Nullable
    UUID teamId() {
        return teamId;
    }

    Instant endsAt() {
        return endsAt;
    }

    boolean isStopped() {
        return stoppedAt != null;
    }

    void stop(Instant at) {
        stoppedAt = at;
    }

    void endAt(Instant later) {
        endsAt = later;
    }

    TimerAnswer answer() {
        return new TimerAnswer(id, words, teamId, cellId, startedAt, endsAt);
    }
}
