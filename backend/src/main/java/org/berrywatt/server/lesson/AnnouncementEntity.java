package org.berrywatt.server.lesson;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.AnnouncementAnswer;
import org.jspecify.annotations.Nullable;

/** What a teacher told the class; it stands until it is taken back, followed by another or its time is over. */
@Entity
@Table(name = "announcement")
class AnnouncementEntity {

    @Id
    private UUID id;

    private UUID labDayId;

    @Column(nullable = false)
    private int position;

    private String words;

    @Column(nullable = false)
    private String writtenBy;

    private Instant madeAt;
    private @Nullable Instant goesAt;
    private @Nullable Instant takenBackAt;

    protected AnnouncementEntity() {}

    /** @param position its number within the day: the highest one was made last */
    AnnouncementEntity(
            UUID id,
            UUID labDayId,
            int position,
            String words,
            @Nullable Instant goesAt,
            String writtenBy,
            Instant madeAt) {
        this.id = id;
        this.labDayId = labDayId;
        this.position = position;
        this.words = words;
        this.goesAt = goesAt;
        this.writtenBy = writtenBy;
        this.madeAt = madeAt;
    }

    UUID labDayId() {
        return labDayId;
    }

    /** False when it was taken back before. */
    boolean takeBack(Instant at) {
        boolean stood = takenBackAt == null;
        takenBackAt = stood ? at : takenBackAt;
        return stood;
    }

    boolean standsAt(Instant now) {
        return takenBackAt == null && (goesAt == null || now.isBefore(goesAt));
    }

    AnnouncementAnswer answer() {
        return new AnnouncementAnswer(id, words, madeAt, goesAt);
    }
}
