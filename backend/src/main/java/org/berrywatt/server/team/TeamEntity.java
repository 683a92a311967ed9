package org.berrywatt.server.team;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;

/** A team. What it was before a change is in its history. */
@Entity
@Table(name = "team")
class TeamEntity {

    @Id
    private UUID id;

    private UUID labDayId;
    private String name;

    @Column(nullable = false)
    private String nameKey;

    private int mark;
    private String code;

    private @Nullable UUID mergedInto;
    private @Nullable Instant mergedAt;

    @Column(nullable = false)
    private String writtenBy;

    @Column(nullable = false)
    private Instant createdAt;

    protected TeamEntity() {}

    TeamEntity(Team team, String code, String writtenBy, Instant createdAt) {
        this.id = team.id();
        this.labDayId = team.labDayId();
        this.name = team.name();
        this.nameKey = Words.key(team.name());
        this.mark = team.mark();
        this.code = code;
        this.writtenBy = writtenBy;
        this.createdAt = createdAt;
    }

    String code() {
        return code;
    }

    @Nullable
    UUID mergedInto() {
        return mergedInto;
    }

    Instant createdAt() {
        return createdAt;
    }

    void rename(String changed) {
        name = changed;
        nameKey = Words.key(changed);
    }

    void renew(String changed) {
        code = changed;
    }

    void mergeInto(UUID other, Instant at) {
        mergedInto = other;
        mergedAt = at;
    }

    /** Whether it was a team of its own then. */
    boolean wasApartAt(Instant moment) {
        return mergedAt == null || moment.isBefore(mergedAt);
    }

    /** @throws Refusal {@code team.merged} when it was joined to another team */
    TeamEntity requireSingle() {
        if (mergedInto != null) {
            throw Refusal.of(ProblemCode.TEAM_MERGED).value(name);
        }
        return this;
    }

    Team view() {
        return new Team(id, labDayId, name, mark);
    }
}
