package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A team.
 *
 * @param mark 0, 1, 2 ... in order of creation within the day; chooses the team's colour and shape
 * @param code the team's own join code, shown to teachers and to the team itself
 * @param joined ids of the teams that were joined to this one; what their phones still hold is taken for it
 */
public record TeamAnswer(
        UUID id,
        UUID labDayId,
        String name,
        int mark,
        @Nullable String code,
        List<UUID> joined) {}
