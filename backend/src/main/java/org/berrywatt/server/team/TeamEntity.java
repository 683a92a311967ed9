package org.berrywatt.server.team;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.server.typed.Words;

/** A team; written once. */
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

    Team view() {
        return new Team(id, labDayId, name, mark);
    }
}
