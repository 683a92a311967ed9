package org.berrywatt.server.access;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;

/** What a browser's cookie stands for: a teacher or a team, for a while. */
@Entity
class Pass {

    @Id
    private String tokenHash;

    private @Nullable UUID teacherId;
    private @Nullable UUID teamId;
    private @Nullable UUID labDayId;
    private Instant issuedAt;
    private Instant expiresAt;

    @NullUnmarked
    protected Pass() {}

    Pass(String tokenHash, Caller holder, Instant now, Duration validity) {
        this.tokenHash = tokenHash;
        this.issuedAt = now;
        this.expiresAt = now.plus(validity);
        if (holder instanceof Caller.Teacher teacher) {
            teacherId = teacher.id();
        } else if (holder instanceof Caller.TeamMember member) {
            teamId = member.teamId();
            labDayId = member.labDayId();
        } else {
            throw new IllegalArgumentException("nobody holds no pass");
        }
    }

    @Nullable
    UUID teacherId() {
        return teacherId;
    }

    Caller.TeamMember asTeamMember() {
        if (teamId == null || labDayId == null) {
            throw new IllegalStateException("this pass is a teacher's");
        }
        return new Caller.TeamMember(teamId, labDayId);
    }

    boolean isValidAt(Instant now) {
        return now.isBefore(expiresAt);
    }

    Instant issuedAt() {
        return issuedAt;
    }
}
