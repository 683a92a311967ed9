package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A team on the leaderboard.
 *
 * @param place shared places are equal numbers; null while the team has no result
 * @param placeLow best place that the uncertainties allow
 * @param placeHigh worst place that the uncertainties allow
 * @param powerDensityWm2 the team's figure under the day's rule
 */
public record TeamStanding(
        UUID teamId,
        String name,
        int mark,
        @Nullable Integer place,
        @Nullable Integer placeLow,
        @Nullable Integer placeHigh,
        @Nullable Figure powerDensityWm2,
        @Nullable Remark remark,
        List<CellStanding> cells) {}
