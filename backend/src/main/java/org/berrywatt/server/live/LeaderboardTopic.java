package org.berrywatt.server.live;

import java.util.UUID;
import java.util.regex.Pattern;

/** The destination of a lab day's leaderboard. Dots divide its parts, since some brokers refuse slashes. */
final class LeaderboardTopic {

    private static final Pattern NAME =
            Pattern.compile("/topic/labday\\.[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\\.leaderboard");

    private LeaderboardTopic() {}

    static String of(UUID labDayId) {
        return "/topic/labday." + labDayId + ".leaderboard";
    }

    static boolean isOne(String destination) {
        return NAME.matcher(destination).matches();
    }
}
