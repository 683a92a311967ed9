package org.berrywatt.server.live;

import java.util.UUID;
import java.util.regex.Pattern;

/** The destinations of a lab day's feeds. Dots divide their parts, since some brokers refuse slashes. */
final class LabDayTopic {

    /** How all of them begin. */
    static final String ALL = "/topic/";

    private static final Pattern NAME =
            Pattern.compile("/topic/labday\\.[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\\.(leaderboard|room)");

    private LabDayTopic() {}

    /** @param kind {@code "leaderboard"} or {@code "room"} */
    static String of(UUID labDayId, String kind) {
        return "/topic/labday." + labDayId + "." + kind;
    }

    static boolean isOne(String destination) {
        return NAME.matcher(destination).matches();
    }
}
