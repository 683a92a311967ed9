package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Who the server takes this browser for.
 *
 * @param kind {@code "teacher"}, {@code "team"} or {@code "nobody"}
 * @param setupNeeded true until the first teacher exists
 * @param demo true when the server runs the invented day
 */
public record WhoAnswer(
        String kind,
        @Nullable String name,
        @Nullable UUID teamId,
        @Nullable UUID labDayId,
        boolean setupNeeded,
        boolean demo) {}
