package org.berrywatt.leaderboard;

import java.util.UUID;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * A team's standing.
 *
 * @param place shared places are equal numbers; null while the team is not ranked
 * @param placeLow best place that the uncertainties allow; null while the team is not ranked
 * @param placeHigh worst place that the uncertainties allow; null while the team is not ranked
 * @param powerDensityWm2 the team's figure under the rule; null while the team is not ranked
 * @param counted cells with a result
 * @param failed cells that count as 0
 * @param outstanding declared cells that are neither, in [0, cells per team]
 */
public record Standing(
        UUID teamId,
        @Nullable Integer place,
        @Nullable Integer placeLow,
        @Nullable Integer placeHigh,
        @Nullable Estimate powerDensityWm2,
        int counted,
        int failed,
        int outstanding) {}
