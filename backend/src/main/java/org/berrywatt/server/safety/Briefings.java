package org.berrywatt.server.safety;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SignOffRequest;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.platform.Texts;
import org.berrywatt.server.team.Team;
import org.berrywatt.server.team.Teams;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Reads requests for sign-offs. */
@Component
class Briefings {

    static final int SHORTEST_REASON = 3;
    private static final List<String> ZONES =
            Arrays.stream(Zone.values()).map(Zone::key).toList();

    /** A double lesson: common practice, no source. */
    private static final int LESSON_MIN = 90;

    private static final int LONGEST_MIN = 480;
    private static final int LONGEST_REASON = 200;

    private final Teams teams;
    private final Texts texts;

    Briefings(Teams teams, Texts texts) {
        this.teams = teams;
        this.texts = texts;
    }

    Briefing read(SignOffRequest request) {
        var zone = zone("zone", request.zone());
        var points = points(zone, Given.need("points", request.points()));
        var reason = reason(request.reason());
        if (reason == null) {
            requireWhole(zone, points);
        }
        return new Briefing(team(request), zone, points, reason, length(request.minutes()));
    }

    static Zone zone(String path, @Nullable String key) {
        return Zone.of(Given.choice(path, key, ZONES)).orElseThrow();
    }

    /** A teacher's reason to let work pass that no sign-off covers. */
    static @Nullable String reason(@Nullable String typed) {
        return typed == null ? null : Words.sentence("reason", typed, SHORTEST_REASON, LONGEST_REASON);
    }

    private Team team(SignOffRequest request) {
        return teams.find(Given.need("teamId", request.teamId()))
                .orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND).field("teamId"));
    }

    private static List<String> points(Zone zone, List<String> ticked) {
        return IntStream.range(0, ticked.size())
                .mapToObj(i -> Given.choice("points[" + i + "]", ticked.get(i), zone.points()))
                .distinct()
                .toList();
    }

    private void requireWhole(Zone zone, List<String> points) {
        var open = zone.points().size() - points.size();
        if (open > 0) {
            throw Refusal.of(ProblemCode.ZONE_BRIEFING_OPEN)
                    .field("points")
                    .value(zone.key())
                    .with("zone", texts.say("catalogue.zone." + zone.key()))
                    .with("count", open);
        }
    }

    private static Duration length(@Nullable Integer minutes) {
        return Duration.ofMinutes(Given.between("minutes", minutes == null ? LESSON_MIN : minutes, 1, LONGEST_MIN));
    }
}
