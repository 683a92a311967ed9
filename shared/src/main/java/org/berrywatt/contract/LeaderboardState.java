package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;

/**
 * The whole leaderboard of a lab day: teams in order of place, teams without a result last.
 *
 * @param metric key of what is compared
 * @param rule key of the rule: the metric and how a team's cells count
 */
public record LeaderboardState(
        UUID labDayId,
        String title,
        String metric,
        String rule,
        double referenceIrradianceWm2,
        double referenceAreaCm2,
        boolean entryOpen,
        List<TeamStanding> teams) {}
