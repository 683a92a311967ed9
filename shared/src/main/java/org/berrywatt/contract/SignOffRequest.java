package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A teacher lets a team work in a hazard zone.
 *
 * @param zone key of the zone, for example {@code "heat"}
 * @param points keys of the points of the briefing that the teacher and the team went through
 * @param minutes how long it holds from when the server takes it, in [1, 480]; 90, a double lesson, when left out
 * @param reason why the team may begin although points are open, 3 to 200 characters; null for an ordinary sign-off
 */
public record SignOffRequest(
        UUID teamId,
        String zone,
        List<String> points,
        @Nullable Integer minutes,
        @Nullable String reason) {}
