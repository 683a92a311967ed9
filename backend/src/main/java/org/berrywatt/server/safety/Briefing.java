package org.berrywatt.server.safety;

import java.time.Duration;
import java.util.List;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.team.Team;
import org.jspecify.annotations.Nullable;

/**
 * A request for a sign-off, understood.
 *
 * @param points points of the zone that were gone through
 * @param reason why the team may begin although points are open; null for an ordinary sign-off
 * @param length how long it holds
 */
record Briefing(
        Team team, Zone zone, List<String> points, @Nullable String reason, Duration length) {}
