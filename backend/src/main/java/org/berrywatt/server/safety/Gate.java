package org.berrywatt.server.safety;

import static java.util.stream.Collectors.joining;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.platform.Texts;
import org.berrywatt.server.team.Teams;
import org.berrywatt.server.typed.Origin;
import org.springframework.stereotype.Component;

/** Lets work count as done when every hot, burning or corroding zone of it was signed off at that moment. */
@Component
class Gate {

    /** A phone may have been without a network for a school day; an older time is a wrong clock. */
    private static final Duration LONGEST_AWAY = Duration.ofHours(12);

    private final SignOffRepository signOffs;
    private final Teams teams;
    private final Texts texts;

    Gate(SignOffRepository signOffs, Teams teams, Texts texts) {
        this.signOffs = signOffs;
        this.teams = teams;
        this.texts = texts;
    }

    void requireSignedOff(HazardousWork work, Caller caller) {
        var open = openZones(work);
        if (!open.isEmpty() && !(caller instanceof Caller.Teacher && saysWhy(work))) {
            throw refusal(open, work, caller);
        }
    }

    /** When the work was done: when the phone noticed it, or where that cannot be, when the server took the entry. */
    static Instant moment(Origin origin) {
        var noticed = origin.noticedAt();
        var plausible = !noticed.isAfter(origin.acceptedAt())
                && !noticed.isBefore(origin.acceptedAt().minus(LONGEST_AWAY));
        return plausible ? noticed : origin.acceptedAt();
    }

    /** Who belonged to another team then was briefed with that one. */
    private List<Zone> openZones(HazardousWork work) {
        var moment = moment(work.origin());
        var covered = signOffs.findByTeamIdIn(teams.partsAt(work.teamId(), moment)).stream()
                .filter(signOff -> signOff.covers(moment))
                .map(SignOff::zone)
                .toList();
        return work.zones().stream()
                .filter(zone -> !covered.contains(zone.key()))
                .sorted()
                .toList();
    }

    private static boolean saysWhy(HazardousWork work) {
        return work.note() != null && work.note().length() >= Briefings.SHORTEST_REASON;
    }

    private Refusal refusal(List<Zone> open, HazardousWork work, Caller caller) {
        var byTeacher = caller instanceof Caller.Teacher;
        return Refusal.of(byTeacher ? ProblemCode.ZONE_REASON_NEEDED : ProblemCode.ZONE_NOT_SIGNED_OFF)
                .field(byTeacher ? "note" : work.field())
                .value(open.stream().map(Zone::key).collect(joining(", ")))
                .with("zone", open.stream().map(this::name).collect(joining(", ")));
    }

    private String name(Zone zone) {
        return texts.say("catalogue.zone." + zone.key());
    }
}
