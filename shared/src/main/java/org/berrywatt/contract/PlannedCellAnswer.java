package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A cell as planned, and what became of it.
 *
 * @param kind {@code planned}, {@code standard} or {@code undyed}; the latter two are the class's own
 * @param team number of the team in the plan, from 1; 0 for the class's own
 * @param teamId the team, once it has joined
 * @param levels which level of each factor, from 0
 * @param recipe what is planned, what is varied first
 * @param byHand whether somebody changed it by hand
 * @param cellId the registered cell that is this one, once there is
 * @param cellLabel its label
 * @param deviations what of that cell is recorded otherwise than planned
 */
public record PlannedCellAnswer(
        String label,
        String kind,
        int team,
        @Nullable UUID teamId,
        @Nullable String teamName,
        List<Integer> levels,
        List<BuildValue> recipe,
        boolean byHand,
        @Nullable UUID cellId,
        @Nullable String cellLabel,
        List<Deviation> deviations) {

    /**
     * A value recorded otherwise than planned.
     *
     * @param planned as planned
     * @param made as recorded
     */
    public record Deviation(BuildValue planned, BuildValue made) {}
}
