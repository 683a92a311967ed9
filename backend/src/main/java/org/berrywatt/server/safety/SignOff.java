package org.berrywatt.server.safety;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.SignOffAnswer;
import org.jspecify.annotations.Nullable;

/** A team may work in a hazard zone for a while; written once, and withdrawn at most once. */
@Entity
class SignOff {

    /** A phone's clock may be a little slow. */
    private static final Duration TOLERANCE = Duration.ofMinutes(2);

    @Id
    private UUID id;

    private UUID teamId;
    private UUID labDayId;
    private String zone;
    private List<String> points;
    private @Nullable String reason;

    @Column(nullable = false)
    private String writtenBy;

    private Instant signedAt;
    private Instant validUntil;

    @Column
    private @Nullable String withdrawnBy;

    private @Nullable Instant withdrawnAt;

    protected SignOff() {}

    SignOff(UUID id, Briefing briefing, String writtenBy, Instant signedAt) {
        this.id = id;
        this.teamId = briefing.team().id();
        this.labDayId = briefing.team().labDayId();
        this.zone = briefing.zone().key();
        this.points = briefing.points();
        this.reason = briefing.reason();
        this.writtenBy = writtenBy;
        this.signedAt = signedAt;
        this.validUntil = signedAt.plus(briefing.length());
    }

    UUID labDayId() {
        return labDayId;
    }

    UUID teamId() {
        return teamId;
    }

    String zone() {
        return zone;
    }

    /** Whether the team might work in the zone at this moment. */
    boolean covers(Instant moment) {
        return !moment.isBefore(signedAt.minus(TOLERANCE))
                && moment.isBefore(validUntil)
                && (withdrawnAt == null || moment.isBefore(withdrawnAt));
    }

    boolean isWithdrawn() {
        return withdrawnAt != null;
    }

    void withdraw(String by, Instant at) {
        withdrawnBy = by;
        withdrawnAt = at;
    }

    SignOffAnswer answer() {
        return new SignOffAnswer(id, teamId, zone, points, reason, signedAt, validUntil, withdrawnAt);
    }
}
